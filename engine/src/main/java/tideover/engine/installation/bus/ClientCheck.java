package tideover.engine.installation.bus;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.BusPort;
import tideover.engine.site.FactId;

/** Each line has exactly one client, and something that answers it; on the network there is at least one. */
final class ClientCheck implements Check<BusStudies> {

    private static final String LIMIT = "bus.client";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(BusStudies bus, Judging judging) {
        Optional<Limit> limit = judging.limit(LIMIT);
        for (BusPort port : bus.unknown()) {
            Judging.Draft draft = judging.at(port.id());
            if (limit.isEmpty()) draft.openForLimit(LIMIT);
            else draft.by(limit.get()).openFor(port.fact("medium"));
        }
        for (BusLine line : bus.lines()) {
            Judging.Draft draft = judging.at(line.head().id());
            if (limit.isEmpty()) draft.openForLimit(LIMIT);
            else judge(line, draft.by(limit.get()));
        }
        for (BusPort server : bus.networkServers()) {
            Judging.Draft draft = judging.at(server.id()).on(server.fact("role"));
            if (limit.isEmpty()) draft.openForLimit(LIMIT);
            else if (bus.networkClients().isEmpty() && !gapsOfNetwork(bus).isEmpty())
                draft.by(limit.get()).openFor(gapsOfNetwork(bus));
            else if (bus.networkClients().isEmpty())
                draft.by(limit.get()).notMet("bus.client.noneOnNetwork", Devices.of(server));
            else
                draft.by(limit.get())
                        .met("bus.client.met", Devices.of(bus.networkClients().get(0)), Devices.of(List.of(server)));
        }
    }

    private static List<FactId> gapsOfNetwork(BusStudies bus) {
        return Stream.concat(
                        bus.unknown().stream().map(port -> port.fact("medium")),
                        bus.network().stream()
                                .filter(port -> port.role() == null)
                                .map(port -> port.fact("role")))
                .toList();
    }

    private static void judge(BusLine line, Judging.Draft draft) {
        List<FactId> missing = line.ports().stream()
                .filter(port -> port.role() == null)
                .map(port -> port.fact("role"))
                .toList();
        for (BusPort port : line.ports()) draft.on(port.fact("role"));
        List<BusPort> clients = line.clients();
        boolean talks = !clients.isEmpty() && !line.servers().isEmpty();
        List<FactId> gaps = talks ? List.of() : line.gaps();
        if (clients.size() > 1) draft.notMet("bus.client.several", Devices.of(clients));
        else if (!missing.isEmpty()) draft.openFor(missing);
        else if (!gaps.isEmpty()) draft.openFor(gaps);
        else if (clients.isEmpty()) draft.notMet("bus.client.none", Devices.of(line.ports()));
        else if (line.servers().isEmpty()) draft.notMet("bus.client.alone", Devices.of(clients.get(0)));
        else draft.met("bus.client.met", Devices.of(clients.get(0)), Devices.of(line.servers()));
    }
}
