package tideover.engine.installation.bus;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.installation.control.Wire;
import tideover.engine.site.BusPort;
import tideover.engine.site.BusRole;
import tideover.engine.site.ControlCable;
import tideover.engine.site.FactId;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;

/** Bus ports joined by cores: one line of RS-485. */
public final class BusLine {

    private final ControlNet net;
    private final List<BusPort> ports;
    private final BusPort head;
    private final Map<Pair, Map<ThingId, ControlCable>> cables = new LinkedHashMap<>();

    /** Two ports between which there is a cable, the first by id first. */
    private record Pair(ThingId one, ThingId other) {
        static Pair of(ThingId a, ThingId b) {
            return a.compareTo(b) < 0 ? new Pair(a, b) : new Pair(b, a);
        }

        boolean has(ThingId port) {
            return one.equals(port) || other.equals(port);
        }
    }

    BusLine(ControlNet net, List<BusPort> ports) {
        this.net = net;
        this.ports = List.copyOf(ports);
        this.head = this.ports.stream()
                .min(Comparator.<BusPort, Boolean>comparing(port -> port.role() != BusRole.CLIENT)
                        .thenComparing(BusPort::id))
                .orElseThrow(() -> new IllegalArgumentException("a line without ports"));
        Set<ThingId> own = new HashSet<>();
        for (BusPort port : ports) own.add(port.id());
        for (Wire wire : net.wires()) {
            ThingId from = wire.from().port();
            ThingId to = wire.to().port();
            if (!from.equals(to) && own.contains(from) && own.contains(to))
                cables.computeIfAbsent(Pair.of(from, to), pair -> new LinkedHashMap<>())
                        .put(wire.cable().id(), wire.cable());
        }
    }

    /** What hangs on it, in the order in which it is written. */
    public List<BusPort> ports() {
        return ports;
    }

    /** Ports that ask. */
    public List<BusPort> clients() {
        return ports.stream().filter(port -> port.role() == BusRole.CLIENT).toList();
    }

    /** Ports that answer. */
    public List<BusPort> servers() {
        return ports.stream().filter(port -> port.role() == BusRole.SERVER).toList();
    }

    /** The port at which findings about the whole line are noted: its client, else the first by id. */
    public BusPort head() {
        return head;
    }

    /** Number of other ports a port has a cable to: one at an end of the line, two within it, more at a branch. */
    public int degree(BusPort port) {
        return (int)
                cables.keySet().stream().filter(pair -> pair.has(port.id())).count();
    }

    /** Its cables, each once. */
    public List<ControlCable> cables() {
        Map<ThingId, ControlCable> all = new LinkedHashMap<>();
        for (Map<ThingId, ControlCable> between : cables.values()) all.putAll(between);
        return List.copyOf(all.values());
    }

    /**
     * Length of the cables from port to port [m], the longest where there are several; lengths not stated are left out,
     * {@link #missingLengths} names them.
     */
    public double lengthM() {
        double sumM = 0;
        for (Map<ThingId, ControlCable> between : cables.values()) {
            double longestM = 0;
            for (ControlCable cable : between.values())
                if (cable.lengthM() != null) longestM = Math.max(longestM, cable.lengthM());
            sumM += longestM;
        }
        return sumM;
    }

    /** Lengths nobody has stated. */
    public List<FactId> missingLengths() {
        return cables().stream()
                .filter(cable -> cable.lengthM() == null)
                .map(cable -> cable.fact("lengthM"))
                .toList();
    }

    /** What hangs on it, electrically. */
    public LineLoad load() {
        return LineLoad.of(ports);
    }

    /** Facts without which it is not known what is joined to it. */
    List<FactId> gaps() {
        return net.gapsOfBus();
    }

    /** Whether a terminal of one port is joined to one of another, by their places: 0 is D1, 1 is D0, 2 the common. */
    boolean isJoined(BusPort one, int place, BusPort other, int otherPlace) {
        Optional<TerminalId> start = terminal(one, place);
        Optional<TerminalId> end = terminal(other, otherPlace);
        return start.isPresent() && end.isPresent() && net.joined(start.get()).contains(end.get());
    }

    /** Whether a port has a terminal in this place. */
    static boolean has(BusPort port, int place) {
        return terminal(port, place).isPresent();
    }

    private static Optional<TerminalId> terminal(BusPort port, int place) {
        List<String> names = port.terminals();
        return names == null || names.size() <= place ? Optional.empty() : Optional.of(port.terminal(names.get(place)));
    }

    /** Lines among bus ports: those that cores join belong together. */
    static List<BusLine> among(ControlNet net, List<BusPort> ports) {
        Map<ThingId, BusPort> known = new LinkedHashMap<>();
        for (BusPort port : ports) known.put(port.id(), port);
        Map<ThingId, Set<ThingId>> joined = new LinkedHashMap<>();
        for (ThingId id : known.keySet()) joined.put(id, new LinkedHashSet<>(Set.of(id)));
        for (Wire wire : net.wires()) {
            Set<ThingId> from = joined.get(wire.from().port());
            Set<ThingId> to = joined.get(wire.to().port());
            if (from == null || to == null || from == to) continue;
            from.addAll(to);
            for (ThingId id : to) joined.put(id, from);
        }
        List<BusLine> lines = new ArrayList<>();
        for (Set<ThingId> together : new LinkedHashSet<>(joined.values()))
            lines.add(new BusLine(
                    net,
                    ports.stream().filter(port -> together.contains(port.id())).toList()));
        return lines;
    }
}
