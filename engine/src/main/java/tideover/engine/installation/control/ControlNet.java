package tideover.engine.installation.control;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tideover.engine.installation.Installation;
import tideover.engine.site.BusPort;
import tideover.engine.site.ControlCable;
import tideover.engine.site.ControlPort;
import tideover.engine.site.Core;
import tideover.engine.site.FactId;
import tideover.engine.site.Port;
import tideover.engine.site.PortKind;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;

/** The control wiring of a site: its ports, their terminals, and the cores between them. */
public final class ControlNet {

    private final Map<ThingId, Port> ports = new LinkedHashMap<>();
    private final List<TerminalId> terminals = new ArrayList<>();
    private final List<Wire> wires = new ArrayList<>();
    private final Map<TerminalId, List<Wire>> wiresAt = new HashMap<>();
    private final Map<TerminalId, TerminalId> passThrough = new HashMap<>();
    private final List<FactId> missingCores = new ArrayList<>(0);

    private final List<ControlPort> controlPorts;
    private final List<BusPort> busPorts;

    private ControlNet(List<ControlPort> controlPorts, List<BusPort> busPorts) {
        this.controlPorts = controlPorts;
        this.busPorts = busPorts;
    }

    /** The control wiring as planned and built. Cores of which an end is unknown or gone are left out. */
    public static ControlNet of(Installation installation) {
        ControlNet net = new ControlNet(installation.all(ControlPort.class), installation.all(BusPort.class));
        for (Port port : installation.all(Port.class)) net.add(port);
        for (ControlCable cable : installation.all(ControlCable.class)) net.add(cable);
        return net;
    }

    /** No control wiring at all. */
    public static ControlNet none() {
        return new ControlNet(List.of(), List.of());
    }

    private void add(Port port) {
        ports.put(port.id(), port);
        List<String> names = port.terminals();
        if (names == null) return;
        for (String name : names) terminals.add(port.terminal(name));
        if (!(port instanceof BusPort bus)) return;
        List<String> onwards = bus.passThrough();
        if (onwards == null) return;
        for (int i = 0; i < onwards.size(); i++) {
            TerminalId second = port.terminal(onwards.get(i));
            terminals.add(second);
            if (i >= names.size()) continue;
            passThrough.put(second, port.terminal(names.get(i)));
            passThrough.put(port.terminal(names.get(i)), second);
        }
    }

    private void add(ControlCable cable) {
        List<Core> cores = cable.cores();
        if (cores == null) {
            missingCores.add(cable.fact("cores"));
            return;
        }
        for (int position = 0; position < cores.size(); position++) {
            Core core = cores.get(position);
            TerminalId from = core.from();
            TerminalId to = core.to();
            if (from == null || to == null || !ports.containsKey(from.port()) || !ports.containsKey(to.port()))
                continue;
            Wire wire = new Wire(wires.size(), cable, position, core);
            wires.add(wire);
            wiresAt.computeIfAbsent(from, t -> new ArrayList<>(2)).add(wire);
            wiresAt.computeIfAbsent(to, t -> new ArrayList<>(2)).add(wire);
        }
    }

    /** Whether nobody has stated any control wiring. */
    public boolean isEmpty() {
        return ports.isEmpty() && wires.isEmpty();
    }

    /** All terminals, port by port; of a bus port the second set behind the first. */
    public List<TerminalId> terminals() {
        return List.copyOf(terminals);
    }

    /** All cores both ends of which are connected. */
    public List<Wire> wires() {
        return List.copyOf(wires);
    }

    /** Cables of which nobody has stated any core. */
    public List<FactId> missingCores() {
        return List.copyOf(missingCores);
    }

    /** Facts without which it is not known where bus ports are joined. */
    public List<FactId> gapsOfBus() {
        List<FactId> gaps = new ArrayList<>(missingCores);
        for (BusPort port : busPorts()) {
            if (port.at() == null) gaps.add(port.fact("at"));
            if (port.medium() == null) gaps.add(port.fact("medium"));
            if (port.terminals() == null) gaps.add(port.fact("terminals"));
        }
        return gaps;
    }

    /** Cores at one terminal. */
    public List<Wire> wiresAt(TerminalId terminal) {
        return List.copyOf(wiresAt.getOrDefault(terminal, List.of()));
    }

    /** Ports of signals. */
    public List<ControlPort> controlPorts() {
        return controlPorts;
    }

    /** Ports of signals of one kind. */
    public List<ControlPort> controlPorts(PortKind kind) {
        return controlPorts.stream().filter(port -> port.kind() == kind).toList();
    }

    /** Bus ports. */
    public List<BusPort> busPorts() {
        return busPorts;
    }

    /** A port by its id. */
    public Optional<Port> findPort(ThingId id) {
        return Optional.ofNullable(ports.get(id));
    }

    /** Terminals joined to one by cores and by pass-through terminals, itself first. */
    public Set<TerminalId> joined(TerminalId terminal) {
        Set<TerminalId> all = new LinkedHashSet<>();
        Deque<TerminalId> waiting = new ArrayDeque<>();
        all.add(terminal);
        waiting.add(terminal);
        while (!waiting.isEmpty()) {
            TerminalId at = waiting.remove();
            for (Wire wire : wiresAt.getOrDefault(at, List.of())) {
                TerminalId next = wire.other(at);
                if (all.add(next)) waiting.add(next);
            }
            TerminalId next = passThrough.get(at);
            if (next != null && all.add(next)) waiting.add(next);
        }
        return all;
    }

    /** The cores of the shortest way between two joined terminals; nothing where they are not joined by cores. */
    public Optional<List<Wire>> findWay(TerminalId start, TerminalId end) {
        Map<TerminalId, List<Wire>> ways = new LinkedHashMap<>();
        Deque<TerminalId> waiting = new ArrayDeque<>();
        ways.put(start, List.of());
        waiting.add(start);
        while (!waiting.isEmpty()) {
            TerminalId at = waiting.remove();
            List<Wire> way = ways.getOrDefault(at, List.of());
            if (at.equals(end)) return Optional.of(way);
            for (Wire wire : wiresAt.getOrDefault(at, List.of())) {
                TerminalId next = wire.other(at);
                if (ways.containsKey(next)) continue;
                List<Wire> longer = new ArrayList<>(way);
                longer.add(wire);
                ways.put(next, List.copyOf(longer));
                waiting.add(next);
            }
            TerminalId next = passThrough.get(at);
            if (next != null && ways.putIfAbsent(next, way) == null) waiting.add(next);
        }
        return Optional.empty();
    }
}
