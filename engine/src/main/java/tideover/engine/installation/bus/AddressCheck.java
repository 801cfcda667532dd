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

/** Each server of a line or network has an address of its own, inside the range of the protocol. */
final class AddressCheck implements Check<BusStudies> {

    private static final String LIMIT = "bus.address";
    private static final String LEAST = "bus.leastAddress";
    private static final String LARGEST = "bus.largestAddress";

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
        Optional<Limit> least = judging.limit(LEAST);
        Optional<Limit> largest = judging.limit(LARGEST);
        Judging.Draft draft = judging.at(server.id()).on(server.fact("address"));
        if (limit.isEmpty() || least.isEmpty() || largest.isEmpty()) {
            draft.openForLimit(LIMIT);
            return;
        }
        draft.by(limit.get());
        Integer address = server.address();
        if (address == null) {
            draft.openFor(server.fact("address"));
            return;
        }
        int first = (int) least.get().requireNumber();
        int last = (int) largest.get().requireNumber();
        List<BusPort> alike = all.stream()
                .filter(port -> Objects.equals(port.address(), address))
                .toList();
        if (address < first || address > last)
            draft.notMet("bus.address.range", Devices.of(server), count(address), count(first), count(last));
        else if (alike.size() > 1) draft.notMet("bus.address.twice", count(address), Devices.of(alike));
        else draft.met("bus.address.met", Devices.of(server), count(address));
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
