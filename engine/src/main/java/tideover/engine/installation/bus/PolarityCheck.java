package tideover.engine.installation.bus;

import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.BusPort;
import tideover.engine.site.FactId;

/** D1, positive when idle, is joined to D1 and D0 to D0, from the client to each server. */
final class PolarityCheck implements Check<BusStudies> {

    private static final String LIMIT = "bus.polarity";

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
        if (line.isJoined(client, 0, server, 1) || line.isJoined(client, 1, server, 0))
            draft.notMet("bus.polarity.crossed", Devices.of(client), Devices.of(server));
        else if (line.isJoined(client, 0, server, 0) && line.isJoined(client, 1, server, 1))
            draft.met("bus.polarity.met", Devices.of(client), Devices.of(server));
        else if (!gaps.isEmpty()) draft.openFor(gaps);
        else draft.notMet("bus.polarity.open", Devices.of(client), Devices.of(server));
    }
}
