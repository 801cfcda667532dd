package tideover.engine.installation.bus;

import static tideover.engine.rules.PhraseArg.count;
import static tideover.engine.rules.PhraseArg.verbatim;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.BusPort;

/** Each server of a line or network has an address of its own. */
final class AddressCheck implements Check<BusStudies> {

    private static final String LIMIT = "bus.address";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(BusStudies bus, Judging judging) {
        for (BusLine line : bus.lines()) for (BusPort server : line.servers()) judge(server, line.servers(), judging);
        for (BusPort server : bus.networkServers()) judgeOnNetwork(server, bus.networkServers(), judging);
    }

    private static void judge(BusPort server, List<BusPort> all, Judging judging) {
        Optional<Limit> limit = judging.limit(LIMIT);
        Judging.Draft draft = judging.at(server.id()).on(server.fact("address"));
        Integer address = server.address();
        if (limit.isEmpty()) {
            draft.openForLimit(LIMIT);
        } else if (address == null) {
            draft.by(limit.get()).openFor(server.fact("address"));
        } else {
            List<BusPort> alike =
                    all.stream().filter(port -> address.equals(port.address())).toList();
            draft.by(limit.get());
            if (alike.size() > 1) draft.notMet("bus.address.twice", count(address), Devices.of(alike));
            else draft.met("bus.address.met", Devices.of(server), count(address));
        }
    }

    private static void judgeOnNetwork(BusPort server, List<BusPort> all, Judging judging) {
        Optional<Limit> limit = judging.limit(LIMIT);
        Judging.Draft draft = judging.at(server.id()).on(server.fact("networkAddress"));
        String address = server.networkAddress();
        if (limit.isEmpty()) {
            draft.openForLimit(LIMIT);
            return;
        }
        draft.by(limit.get());
        if (address == null) {
            draft.openFor(server.fact("networkAddress"));
            return;
        }
        // Behind one gateway several servers share its network address, and the unit tells them apart.
        List<BusPort> alike = all.stream()
                .filter(port ->
                        address.equals(port.networkAddress()) && Objects.equals(port.address(), server.address()))
                .toList();
        if (alike.size() > 1) draft.notMet("bus.address.networkTwice", verbatim(address), Devices.of(alike));
        else draft.met("bus.address.network", Devices.of(server), verbatim(address));
    }
}
