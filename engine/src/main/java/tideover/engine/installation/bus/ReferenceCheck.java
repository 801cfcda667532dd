package tideover.engine.installation.bus;

import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.BusPort;
import tideover.engine.site.FactId;

/** The common of the line is joined at the client and at each server. */
final class ReferenceCheck implements Check<BusStudies> {

    private static final String LIMIT = "bus.reference";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(BusStudies bus, Judging judging) {
        Optional<Limit> limit = judging.limit(LIMIT);
        for (BusLine line : bus.lines())
            for (BusPort server : line.servers()) {
                BusPort client = line.head();
                if (client.id().equals(server.id())) continue;
                Judging.Draft draft =
                        judging.at(server.id()).on(client.fact("terminals")).on(server.fact("terminals"));
                if (limit.isEmpty()) draft.openForLimit(LIMIT);
                else judge(line, client, server, draft.by(limit.get()));
            }
    }

    private static void judge(BusLine line, BusPort client, BusPort server, Judging.Draft draft) {
        List<FactId> gaps = line.gaps();
        if (line.isJoined(client, 2, server, 2)) draft.met("bus.reference.met", Devices.of(client), Devices.of(server));
        else if (!gaps.isEmpty()) draft.openFor(gaps);
        else draft.notMet("bus.reference.open", Devices.of(client), Devices.of(server));
    }
}
