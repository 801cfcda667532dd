package tideover.papers.terminals;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.installation.control.Wire;
import tideover.engine.site.BusPort;
import tideover.engine.site.BusRole;
import tideover.engine.site.ControlPort;
import tideover.engine.site.Port;
import tideover.engine.site.PortKind;
import tideover.engine.site.SignalForm;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;

/** How far each control terminal is from where its current comes from, counted in cores and contacts. */
final class Net {

    /** Terminals nothing leads to begin a count of their own behind all others. */
    private static final int APART = 1000;

    private final ControlNet net;
    private final Map<TerminalId, Integer> distances = new HashMap<>();

    Net(ControlNet net) {
        this.net = net;
        List<TerminalId> begins = new ArrayList<>();
        for (ControlPort port : net.controlPorts(PortKind.SUPPLY)) first(port, begins);
        for (ControlPort port : net.controlPorts(PortKind.OUTPUT))
            if (port.form() != SignalForm.CONTACT) first(port, begins);
        for (ControlPort port : net.controlPorts(PortKind.INPUT)) if (isWetting(port)) first(port, begins);
        for (BusPort port : net.busPorts())
            if (port.role() == BusRole.CLIENT && port.terminals() != null)
                port.terminals().forEach(name -> begins.add(port.terminal(name)));
        begins.forEach(terminal -> distances.put(terminal, 0));
        walk(new ArrayDeque<>(begins));
        for (TerminalId terminal : net.terminals())
            if (!distances.containsKey(terminal)) {
                distances.put(terminal, APART);
                walk(new ArrayDeque<>(List.of(terminal)));
            }
    }

    private static void first(Port port, List<TerminalId> begins) {
        List<String> names = port.terminals();
        if (names != null && !names.isEmpty()) begins.add(port.terminal(names.get(0)));
    }

    /** Whether an input feeds the contact it reads. */
    private static boolean isWetting(ControlPort port) {
        return port.form() == SignalForm.CONTACT
                && port.terminals() != null
                && port.terminals().size() > 1;
    }

    private void walk(Deque<TerminalId> waiting) {
        while (!waiting.isEmpty()) {
            TerminalId at = waiting.remove();
            int next = distance(at) + 1;
            for (Wire wire : net.wiresAt(at)) reach(wire.other(at), next, waiting);
            Port port = net.findPort(at.port()).orElse(null);
            if (!(port instanceof ControlPort control) || control.terminals() == null) continue;
            if (control.kind() == PortKind.SUPPLY) continue;
            for (String name : control.terminals()) reach(port.terminal(name), next, waiting);
        }
    }

    private void reach(TerminalId terminal, int distance, Deque<TerminalId> waiting) {
        if (distances.putIfAbsent(terminal, distance) == null) waiting.add(terminal);
    }

    int distance(TerminalId terminal) {
        return Objects.requireNonNullElse(distances.get(terminal), APART);
    }

    /** Whether nothing is connected to any of its terminals. */
    boolean isFree(Port port) {
        ThingId id = port.id();
        return net.terminals().stream()
                .filter(terminal -> terminal.port().equals(id))
                .allMatch(terminal -> net.wiresAt(terminal).isEmpty());
    }
}
