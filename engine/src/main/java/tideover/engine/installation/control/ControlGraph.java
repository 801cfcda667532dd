package tideover.engine.installation.control;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.ControlPort;
import tideover.engine.site.PortKind;
import tideover.engine.site.SignalForm;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;

/** Control terminals as nodes; cores and contacts, each of which may be closed, as edges. */
final class ControlGraph {

    /** A core, or a contact; an electronic output is a contact between the supply of its device and its terminal. */
    private record Edge(
            int from, int to, @Nullable Wire wire, @Nullable ControlPort contact) {
        int other(int node) {
            return node == from ? to : from;
        }
    }

    /**
     * One way between two terminals.
     *
     * @param wires    cores on it
     * @param contacts contacts on it
     */
    record Way(List<Wire> wires, List<ControlPort> contacts) {}

    private final Map<TerminalId, Integer> nodes = new HashMap<>();
    private final List<Edge> edges = new ArrayList<>();
    private final List<List<Edge>> edgesAt = new ArrayList<>();

    ControlGraph(ControlNet net) {
        for (TerminalId terminal : net.terminals()) node(terminal);
        // By id, so that of two ways equally short always the same is taken.
        List<Wire> wires = new ArrayList<>(net.wires());
        wires.sort(
                Comparator.<Wire, ThingId>comparing(wire -> wire.cable().id()).thenComparing(Wire::position));
        for (Wire wire : wires) add(wire.from(), wire.to(), wire, null);
        List<ControlPort> supplies = net.controlPorts(PortKind.SUPPLY);
        List<ControlPort> ports = new ArrayList<>(net.controlPorts());
        ports.sort(Comparator.comparing(ControlPort::id));
        for (ControlPort port : ports) {
            if (port.kind() == PortKind.AUXILIARY_CONTACT) addContact(port);
            if (port.kind() != PortKind.OUTPUT || port.form() == null) continue;
            switch (port.form()) {
                case CONTACT -> addContact(port);
                case PLUS, MINUS -> addElectronic(port, supplies);
            }
        }
    }

    private void addContact(ControlPort port) {
        List<String> names = port.terminals();
        if (names != null && names.size() >= 2)
            add(port.terminal(names.get(0)), port.terminal(names.get(1)), null, port);
    }

    private void addElectronic(ControlPort port, List<ControlPort> supplies) {
        List<String> names = port.terminals();
        if (names == null || names.isEmpty()) return;
        int rail = port.form() == SignalForm.PLUS ? 0 : 1;
        for (ControlPort supply : supplies) {
            List<String> rails = supply.terminals();
            if (rails == null
                    || rails.size() < 2
                    || supply.at() == null
                    || !supply.at().equals(port.at())) continue;
            add(supply.terminal(rails.get(rail)), port.terminal(names.get(0)), null, port);
        }
    }

    private void add(TerminalId from, TerminalId to, @Nullable Wire wire, @Nullable ControlPort contact) {
        Edge edge = new Edge(node(from), node(to), wire, contact);
        edges.add(edge);
        edgesAt.get(edge.from).add(edge);
        edgesAt.get(edge.to).add(edge);
    }

    private int node(TerminalId terminal) {
        Integer known = nodes.get(terminal);
        if (known != null) return known;
        nodes.put(terminal, edgesAt.size());
        edgesAt.add(new ArrayList<>(3));
        return edgesAt.size() - 1;
    }

    /** The shortest way from one terminal to another while all contacts are closed but some. */
    Optional<Way> findWay(TerminalId start, TerminalId end, Set<ThingId> open) {
        int from = node(start);
        int to = node(end);
        @Nullable Edge[] came = new @Nullable Edge[edgesAt.size()];
        boolean[] seen = new boolean[edgesAt.size()];
        int[] waiting = new int[edgesAt.size()];
        int count = 0;
        waiting[count++] = from;
        seen[from] = true;
        for (int next = 0; next < count && !seen[to]; next++) {
            for (Edge edge : edgesAt.get(waiting[next])) {
                int other = edge.other(waiting[next]);
                if (seen[other] || edge.contact != null && open.contains(edge.contact.id())) continue;
                seen[other] = true;
                came[other] = edge;
                waiting[count++] = other;
            }
        }
        if (!seen[to]) return Optional.empty();
        List<Wire> wires = new ArrayList<>();
        List<ControlPort> contacts = new ArrayList<>(2);
        int at = to;
        for (Edge edge = came[at]; edge != null; edge = came[at]) {
            if (edge.wire != null) wires.add(edge.wire);
            if (edge.contact != null) contacts.add(edge.contact);
            at = edge.other(at);
        }
        return Optional.of(new Way(wires, contacts));
    }
}
