package tideover.papers.terminals;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.rules.Unit;
import tideover.engine.site.BusPort;
import tideover.engine.site.ControlPort;
import tideover.engine.site.MainContacts;
import tideover.engine.site.Port;
import tideover.engine.site.PortKind;
import tideover.engine.site.SignalForm;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.schedule.ControlEnd;
import tideover.engine.wiring.schedule.ControlSchedule;
import tideover.engine.wiring.schedule.CoreRow;
import tideover.papers.Wording;

/** The control terminals of each device, port by port as its maker lists them. */
final class ControlCards {

    private final ControlNet net;
    private final ControlSchedule schedule;
    private final LeadWords words;
    private final Wording wording;

    ControlCards(ControlNet net, ControlSchedule schedule, LeadWords words, Wording wording) {
        this.net = net;
        this.schedule = schedule;
        this.words = words;
        this.wording = wording;
    }

    /** The rows of one device. */
    List<Row> rows(ThingId device) {
        List<Row> rows = new ArrayList<>();
        for (ControlPort port : net.controlPorts()) if (Objects.equals(place(port), device)) signal(port, rows);
        for (BusPort bus : net.busPorts()) if (Objects.equals(place(bus), device)) bus(bus, rows);
        return rows;
    }

    /** The device a port is at; where nobody has said, the port stands for itself. */
    static ThingId place(Port port) {
        return port.at() == null ? port.id() : port.at();
    }

    private void signal(ControlPort port, List<Row> rows) {
        List<String> names = names(port);
        for (int i = 0; i < names.size(); i += 2) {
            Post right = i + 1 < names.size() ? post(port, names.get(i + 1)) : null;
            rows.add(new Row(i == 0 ? heading(port) : "", post(port, names.get(i)), right, picture(port, right)));
        }
    }

    private void bus(BusPort bus, List<Row> rows) {
        List<String> names = names(bus);
        List<String> onwards = onwards(bus);
        for (int i = 0; i < Math.max(names.size(), onwards.size()); i++) {
            Post left = i < names.size() ? post(bus, names.get(i)) : null;
            Post right = i < onwards.size() ? post(bus, onwards.get(i)) : null;
            Picture picture = left != null && right != null ? Picture.THROUGH : Picture.NONE;
            rows.add(new Row(i == 0 ? heading(bus) : "", left, right, picture));
        }
    }

    /** Its terminals; those nobody has listed but at which a core ends stand last. */
    List<String> names(Port port) {
        Set<String> names = new LinkedHashSet<>();
        if (port.terminals() != null) names.addAll(port.terminals());
        for (CoreRow row : schedule.rows()) {
            add(row.from(), port, names);
            add(row.to(), port, names);
        }
        if (port instanceof BusPort bus) names.removeAll(onwards(bus));
        return new ArrayList<>(names);
    }

    private static void add(@Nullable ControlEnd end, Port port, Set<String> names) {
        if (end != null && end.terminal().port().equals(port.id()))
            names.add(end.terminal().name());
    }

    static List<String> onwards(BusPort bus) {
        return bus.passThrough() == null ? List.of() : bus.passThrough();
    }

    private Post post(Port port, String name) {
        TerminalId terminal = port.terminal(name);
        List<Lead> leads = new ArrayList<>();
        for (CoreRow row : schedule.rows()) {
            if (isAt(row.from(), terminal)) leads.add(words.of(row, row.to()));
            if (isAt(row.to(), terminal)) leads.add(words.of(row, row.from()));
        }
        return new Post(name, "", leads);
    }

    private static boolean isAt(@Nullable ControlEnd end, TerminalId terminal) {
        return end != null && end.terminal().equals(terminal);
    }

    /** The same in short, where a symbol says the rest. */
    String brief(ControlPort port) {
        if (port.onMeans() == null || port.kind() == PortKind.COIL) return numbered(port);
        return wording.text("terminals.brief", numbered(port), wording.word(port.onMeans()));
    }

    private String numbered(ControlPort port) {
        String kind = wording.capitalised(port.kind() == null ? "?" : wording.word(port.kind()));
        return port.number() == null ? kind : kind + " " + port.number();
    }

    /** What a port is for, under the device's own number. */
    private String heading(ControlPort port) {
        List<String> parts = new ArrayList<>();
        parts.add(numbered(port));
        if (port.voltageV() != null) parts.add(wording.amount(port.voltageV(), Unit.V));
        if (port.onMeans() != null) parts.add(wording.text("terminals.onMeans", wording.word(port.onMeans())));
        if (port.closedWhen() != null)
            parts.add(wording.text("terminals.closedWhen." + port.closedWhen().name()));
        if (port.form() != null && port.form() != SignalForm.CONTACT) parts.add(wording.word(port.form()));
        return String.join(" · ", parts);
    }

    String heading(BusPort bus) {
        List<String> parts = new ArrayList<>();
        parts.add(bus.medium() == null ? wording.text("terminals.bus") : wording.word(bus.medium()));
        if (bus.role() != null) parts.add(wording.word(bus.role()));
        if (bus.address() != null) parts.add(wording.text("terminals.address", String.valueOf(bus.address())));
        if (bus.networkAddress() != null) parts.add(bus.networkAddress());
        if (bus.terminationOhm() != null)
            parts.add(wording.text("terminals.termination", wording.amount(bus.terminationOhm(), Unit.OHM)));
        return String.join(" · ", parts);
    }

    static Picture picture(ControlPort port, @Nullable Post right) {
        PortKind kind = port.kind();
        if (right == null || kind == null) return Picture.NONE;
        return switch (kind) {
            case SUPPLY -> Picture.SUPPLY;
            case COIL -> Picture.COIL;
            case OUTPUT -> port.form() == SignalForm.CONTACT ? Picture.OUTPUT_CONTACT : Picture.NONE;
            case AUXILIARY_CONTACT -> port.closedWhen() == MainContacts.OPEN ? Picture.BREAK : Picture.MAKE;
            case INPUT -> Picture.NONE;
        };
    }
}
