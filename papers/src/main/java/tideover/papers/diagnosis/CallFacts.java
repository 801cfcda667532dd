package tideover.papers.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Battery;
import tideover.engine.site.BusPort;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.OverloadPoint;
import tideover.engine.wiring.model.Reading;
import tideover.engine.wiring.model.ReadingKind;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.procedure.PlannedReading;
import tideover.engine.wiring.procedure.StateTable;
import tideover.papers.DeviceText;
import tideover.papers.Wording;
import tideover.papers.wiring.WiringModel;
import tideover.papers.wiring.WiringWording;

/** The facts of a house that a fault call needs, one line each. */
final class CallFacts {

    private static final String UNKNOWN = "?";

    private final WiringModel model;
    private final Installation installation;
    private final WiringWording words;
    private final Wording wording;

    CallFacts(WiringModel model) {
        this.model = model;
        this.installation = model.house().installation();
        this.words = model.words();
        this.wording = words.words();
    }

    /** The lines of one fact. */
    List<String> of(CallFact fact) {
        return switch (fact) {
            case OVERLOAD ->
                installation.formingInverters().stream().map(this::overload).toList();
            case LINES -> lines();
            case GRID_ONLY ->
                installation.circuits().stream()
                        .filter(circuit -> !installation.staysOn(circuit))
                        .map(circuit -> wording.name(circuit.id()))
                        .toList();
            case RCDS -> rcds();
            case BATTERIES ->
                installation.all(Battery.class).stream().map(this::battery).toList();
            case BUS ->
                model.house().wiring().busPorts().stream().map(this::bus).toList();
            case ANSWERS -> states(Set.of(ReadingKind.BUS), installation.states());
            case RESISTANCE -> resistance();
            case SIGNALS ->
                states(
                        Set.of(ReadingKind.MODE, ReadingKind.POSITION, ReadingKind.INPUT, ReadingKind.OUTPUT),
                        List.of(OperatingState.CONNECTED, OperatingState.ISLAND_GRID_DEAD));
            case VOLTAGES ->
                states(Set.of(ReadingKind.VOLTAGE), List.of(OperatingState.CONNECTED, OperatingState.ISLAND_GRID_DEAD));
        };
    }

    private String amount(@Nullable Double value, Unit unit) {
        return value == null ? UNKNOWN : wording.amount(value, unit);
    }

    private String overload(Inverter inverter) {
        Double lineA = inverter.lineCurrentA();
        StringBuilder points = new StringBuilder();
        if (inverter.overload() != null)
            for (OverloadPoint point : inverter.overload())
                if (lineA != null && point.currentRatio() != null && point.timeS() != null)
                    points.append(wording.text(
                            "call.fact.overload.point",
                            amount(lineA * point.currentRatio(), Unit.A),
                            amount(point.timeS(), Unit.S)));
        return wording.text(
                "call.fact.overload",
                wording.name(inverter.id()),
                amount(lineA, Unit.A),
                amount(inverter.ratedPowerVa(), Unit.VA),
                points.toString());
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        DeviceText devices = new DeviceText(wording);
        for (Conductor line : List.of(Conductor.L1, Conductor.L2, Conductor.L3)) {
            List<String> circuits = new ArrayList<>();
            for (Circuit circuit : installation.circuits())
                if (installation.staysOn(circuit)
                        && installation.lines(circuit.id()).contains(line))
                    circuits.add(wording.name(circuit.id())
                            + (circuit.protection() == null ? "" : " " + devices.of(circuit.protection())));
            if (!circuits.isEmpty())
                lines.add(wording.text("call.fact.line", line.name(), String.join(", ", circuits)));
        }
        return lines;
    }

    private List<String> rcds() {
        List<String> lines = new ArrayList<>();
        DeviceText devices = new DeviceText(wording);
        for (Fed fed : installation.all(Fed.class)) {
            if (fed.rcd() == null) continue;
            List<String> behind = installation.circuits().stream()
                    .filter(circuit -> installation.isBehind(circuit, fed.id()))
                    .map(circuit -> wording.name(circuit.id()))
                    .toList();
            String device = wording.text("call.fact.rcd", wording.name(fed.id()), devices.of(fed.rcd()));
            lines.add(behind.isEmpty() ? device : wording.text("call.fact.line", device, String.join(", ", behind)));
        }
        return lines;
    }

    private String battery(Battery battery) {
        return wording.text(
                "call.fact.battery",
                wording.name(battery.id()),
                amount(battery.usableEnergyWh(), Unit.WH),
                amount(battery.dischargePowerW(), Unit.W));
    }

    private String bus(BusPort port) {
        List<String> facts = new ArrayList<>();
        if (port.role() != null) facts.add(wording.word(port.role()));
        if (port.address() != null) facts.add(wording.text("wiring.port.address", String.valueOf(port.address())));
        if (port.networkAddress() != null) facts.add(port.networkAddress());
        if (port.rateBitPerS() != null) facts.add(amount(port.rateBitPerS().doubleValue(), Unit.BIT_PER_S));
        if (port.parity() != null) facts.add(wording.word(port.parity()));
        if (port.stopBits() != null) facts.add(wording.text("call.fact.bus.stop", PhraseArg.count(port.stopBits())));
        if (port.terminals() != null) facts.add(String.join("–", port.terminals()));
        if (port.terminals() != null)
            facts.add(
                    port.terminationOhm() == null
                            ? wording.text("call.fact.bus.noResistor")
                            : wording.text("call.fact.bus.resistor", amount(port.terminationOhm(), Unit.OHM)));
        return wording.text("call.fact.bus", words.name(port.id()), String.join(", ", facts));
    }

    private List<String> resistance() {
        List<String> lines = new ArrayList<>();
        for (PlannedReading planned : model.run().procedure().readings()) {
            Reading reading = planned.reading();
            if (reading.kind() != ReadingKind.BUS_RESISTANCE) continue;
            lines.add(wording.text(
                    "call.fact.bus",
                    words.place(reading),
                    words.shown(reading, model.run().expected(planned))));
        }
        return lines;
    }

    /** What readings show in some states, in the order of the states. */
    private List<String> states(Set<ReadingKind> kinds, List<OperatingState> states) {
        List<String> lines = new ArrayList<>();
        for (StateTable.Row row : StateTable.of(model.house()).rows()) {
            Reading reading = row.reading();
            if (!kinds.contains(reading.kind())) continue;
            List<String> shown = new ArrayList<>();
            for (OperatingState state : states) {
                Shown value = row.shown().get(state);
                if (value != null)
                    shown.add(wording.text("call.fact.state", wording.word(state), words.shown(reading, value)));
            }
            lines.add(wording.text(
                    "call.fact.shown", words.place(reading), words.what(reading), String.join("; ", shown)));
        }
        return lines;
    }
}
