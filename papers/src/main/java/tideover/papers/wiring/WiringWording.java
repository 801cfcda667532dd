package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Unit;
import tideover.engine.site.BusPort;
import tideover.engine.site.Conductor;
import tideover.engine.site.ControlPort;
import tideover.engine.site.Port;
import tideover.engine.site.PortKind;
import tideover.engine.site.TerminalId;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.model.Reading;
import tideover.engine.wiring.model.ReadingKind;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.procedure.PlannedReading;
import tideover.engine.wiring.procedure.Step;
import tideover.engine.wiring.schedule.TerminalNames;
import tideover.papers.Wording;

/** Words what the wiring model tells: readings and what they show, situations, steps. Mistakes: {@link MistakeWording}. */
public final class WiringWording {

    private static final String GRID_SIDE = "grid side ";
    private static final String ISLAND_SIDE = "island side ";

    private final HouseModel model;
    private final Installation installation;
    private final Wording wording;
    private final TerminalNames names;
    private final double lineVoltageV;

    /** @param wording knows the names of the site */
    public WiringWording(HouseModel model, Wording wording) {
        this.model = model;
        this.installation = model.installation();
        this.wording = wording;
        this.names = new TerminalNames(installation);
        Double nominalV = installation.supply().nominalVoltageV();
        this.lineVoltageV = nominalV == null ? Double.NaN : nominalV;
    }

    /** The words and names beneath. */
    public Wording words() {
        return wording;
    }

    /** Short name of a thing, such as {@code QA1}. */
    public String tag(ThingId thing) {
        return names.tag(thing);
    }

    /** Name of a thing or port; a port nobody has named goes by its device. */
    public String name(ThingId thing) {
        Port port = model.wiring().findPort(thing).orElse(null);
        if (port == null || port.designation() != null || port.at() == null) return wording.name(thing);
        String kind = port instanceof ControlPort control && control.kind() != null
                ? wording.word(control.kind())
                : wording.text("wiring.port.bus");
        Integer number = port instanceof ControlPort control ? control.number() : null;
        String numbered = number == null ? kind : wording.text("wiring.port.number", kind, number.toString());
        return tag(port.at()) + " " + numbered;
    }

    /** Where a reading is taken. */
    public String place(Reading reading) {
        if (reading.kind() == ReadingKind.CONTROL_VOLTAGE)
            return terminal(new TerminalId(reading.place(), reading.detail()));
        if (side(reading) == null) return name(reading.place());
        return wording.text(
                side(reading) == Terminals.INCOMING ? "reading.gridSide" : "reading.islandSide", tag(reading.place()));
    }

    /** A control terminal with its device, such as {@code QA1:A1}. */
    public String terminal(TerminalId terminal) {
        ThingId device = model.wiring().findPort(terminal.port()).map(Port::at).orElse(terminal.port());
        return tag(device) + ":" + terminal.name();
    }

    private static @Nullable Terminals side(Reading reading) {
        if (reading.kind() != ReadingKind.VOLTAGE) return null;
        if (reading.detail().startsWith(GRID_SIDE)) return Terminals.INCOMING;
        return reading.detail().startsWith(ISLAND_SIDE) ? Terminals.OUTGOING : null;
    }

    /** What is read there. */
    public String what(Reading reading) {
        return what(List.of(reading));
    }

    /** What is read at one place, told once where readings differ in conductors or terminals only. */
    public String what(List<Reading> readings) {
        Map<Frame, List<String>> items = new LinkedHashMap<>();
        for (Reading reading : readings)
            items.computeIfAbsent(frame(reading), frame -> new ArrayList<>()).add(item(reading));
        List<String> told = new ArrayList<>();
        items.forEach((frame, all) -> told.add(wording.text(frame.key(), String.join(", ", all), frame.other())));
        return String.join(", ", told);
    }

    /**
     * What several readings at one place have in common.
     *
     * @param other what stands beside the conductors or terminals
     */
    private record Frame(String key, String other) {}

    private Frame frame(Reading reading) {
        String key = "reading." + reading.kind().name();
        return switch (reading.kind()) {
            case INPUT, OUTPUT -> meaning(key, reading.place());
            case CONTROL_VOLTAGE -> new Frame(key, name(reading.place()));
            case CONTINUITY -> continuity(key, reading.detail());
            case VOLTAGE,
                    METER,
                    CORE_CONTINUITY,
                    CONTACT,
                    COIL,
                    BUS_RESISTANCE,
                    MODE,
                    POSITION,
                    BUS,
                    SETTING,
                    LINK_SEEN,
                    ROTATION,
                    LOAD,
                    RCD_TEST,
                    EARTH_CURRENT -> new Frame(key, "");
        };
    }

    private Frame meaning(String key, ThingId place) {
        ControlPort port = model.wiring().findPort(place).orElse(null) instanceof ControlPort control ? control : null;
        return port == null || port.onMeans() == null
                ? new Frame(key + ".plain", "")
                : new Frame(key, wording.word(port.onMeans()));
    }

    private Frame continuity(String key, String detail) {
        if (detail.equals("PE")) return new Frame(key + ".PE", "");
        if (detail.endsWith(" to grid side")) return new Frame(key + ".toGridSide", "");
        if (detail.endsWith(" through")) return new Frame(key + ".through", "");
        String[] from = detail.split(" from ");
        return from.length == 2 ? new Frame(key + ".from", name(new ThingId(from[1]))) : new Frame(key, "");
    }

    /** The conductors or terminals of a reading. */
    private String item(Reading reading) {
        String detail = reading.detail();
        return switch (reading.kind()) {
            case CONTACT, COIL, BUS_RESISTANCE -> terminals(reading.place());
            case VOLTAGE -> voltage(reading);
            case CONTINUITY -> detail.split(" ")[0].replace('-', '–');
            case MODE,
                    POSITION,
                    INPUT,
                    OUTPUT,
                    BUS,
                    METER,
                    SETTING,
                    LINK_SEEN,
                    ROTATION,
                    CONTROL_VOLTAGE,
                    LOAD,
                    RCD_TEST,
                    EARTH_CURRENT,
                    CORE_CONTINUITY -> detail;
        };
    }

    private String terminals(ThingId place) {
        List<String> all = model.wiring().findPort(place).map(Port::terminals).orElse(null);
        return all == null || all.isEmpty() ? name(place) : String.join("–", all.subList(0, Math.min(2, all.size())));
    }

    /** Two conductors, at a switching device with the maker's names of their terminals. */
    private String voltage(Reading reading) {
        Terminals side = side(reading);
        String[] pair = reading.detail()
                .substring(reading.detail().lastIndexOf(' ') + 1)
                .split("-");
        String conductors = String.join("–", pair);
        if (side == null) return conductors;
        String one = names.terminal(reading.place(), side, Conductor.valueOf(pair[0]));
        String other = names.terminal(reading.place(), side, Conductor.valueOf(pair[1]));
        boolean alike = one.equals(pair[0]) && other.equals(pair[1]);
        return alike ? conductors : wording.text("reading.named", conductors, one + "–" + other);
    }

    /** A reading with its situation and place. */
    public String whole(PlannedReading planned) {
        return wording.text("reading.whole", situation(planned), place(planned.reading()), what(planned.reading()));
    }

    /** How the house stands while a reading is taken. */
    public String situation(PlannedReading planned) {
        String situation = wording.word(planned.situation());
        return planned.lifted() == null
                ? situation
                : wording.text("situation.without", situation, new MistakeWording(this, model).core(planned.lifted()));
    }

    /** What a step is for, and where. */
    public String step(Step step) {
        String core = step.detail().isEmpty()
                ? name(step.place())
                : new MistakeWording(this, model).core(step.place(), Integer.parseInt(step.detail()) - 1);
        return wording.text("step.at", wording.word(step.name()), core);
    }

    /** What a reading shows, as a figure where the site tells one. */
    public String shown(Reading reading, Shown shown) {
        ReadingKind kind = reading.kind();
        if (kind == ReadingKind.BUS_RESISTANCE) return resistance(reading.place(), shown);
        if (shown == Shown.PLUS) {
            Double supplyV = supplyV();
            return supplyV == null ? wording.word(shown) : wording.amount(supplyV, Unit.V);
        }
        double volts = switch (shown) {
            case LINE_VOLTAGE -> lineVoltageV;
            case LINE_TO_LINE_VOLTAGE -> Math.rint(lineVoltageV * Math.sqrt(3) / 10) * 10;
            default -> Double.NaN;
        };
        return Double.isFinite(volts) ? wording.amount(volts, Unit.V) : wording.word(shown);
    }

    private @Nullable Double supplyV() {
        return model.wiring().controlPorts(PortKind.SUPPLY).stream()
                .map(ControlPort::voltageV)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    /** End resistors in parallel; what bias and loads add is too little to mislead. */
    private String resistance(ThingId client, Shown shown) {
        int resistors = shown == Shown.ONE_RESISTOR ? 1 : shown == Shown.TWO_RESISTORS ? 2 : 0;
        Double ohm = model.wiring().findPort(client).orElse(null) instanceof BusPort bus ? bus.terminationOhm() : null;
        return resistors == 0 || ohm == null
                ? wording.word(shown)
                : wording.text("shown.resistance", wording.amount(ohm / resistors, Unit.OHM), wording.word(shown));
    }
}
