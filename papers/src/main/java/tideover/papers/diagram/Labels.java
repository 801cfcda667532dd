package tideover.papers.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Cable;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.Isolator;
import tideover.engine.site.Meter;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.RcdDelay;
import tideover.engine.site.ResidualDevice;
import tideover.engine.site.Supply;
import tideover.engine.site.SupplyLines;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.papers.Wording;

/** The short texts beside symbols: B16, 30 mA A, 3×2.5 mm² 14 m. What is not known is a question mark. */
final class Labels {

    private static final String UNKNOWN = "?";

    private final Wording wording;
    private final Installation installation;
    private final boolean anythingStaysOn;
    private final Map<ThingId, String> notes;

    Labels(Wording wording, Installation installation) {
        this(wording.with(installation), installation, Map.of());
    }

    private Labels(Wording wording, Installation installation, Map<ThingId, String> notes) {
        this.wording = wording;
        this.installation = installation;
        this.notes = notes;
        this.anythingStaysOn = installation.circuits().stream().anyMatch(installation::staysOn);
    }

    Labels with(Map<ThingId, String> noted) {
        return new Labels(wording, installation, Map.copyOf(noted));
    }

    /** What is noted at a thing: one line, or none. */
    List<String> note(Thing thing) {
        String note = notes.getOrDefault(thing.id(), "");
        return note.isBlank() ? List.of() : List.of(note.strip());
    }

    Wording wording() {
        return wording;
    }

    String name(Thing thing) {
        return wording.name(thing.id());
    }

    String name(@Nullable ThingId thing) {
        return thing == null ? UNKNOWN : wording.name(thing);
    }

    String amount(@Nullable Double value, Unit unit) {
        return value == null ? UNKNOWN : together(wording.amount(value, unit));
    }

    /** A quantity whose unit is never parted from its number. */
    private static String together(String amount) {
        return amount.replace(' ', '\u00a0');
    }

    String word(@Nullable Enum<?> word) {
        return word == null ? UNKNOWN : wording.word(word);
    }

    /** Such as B16 for a circuit-breaker or "fuse 35 A". */
    String overcurrent(@Nullable OvercurrentDevice device) {
        if (device == null) return UNKNOWN;
        if (device.kind() == OvercurrentKind.FUSE)
            return wording.text("diagram.fuse", amount(device.ratedCurrentA(), Unit.A));
        Double rated = device.ratedCurrentA();
        String number = rated == null ? UNKNOWN : wording.amount(rated, Unit.RATIO);
        return word(device.curve()) + number;
    }

    /** Such as "30 mA A" or "300 mA S A". */
    String residual(ResidualDevice device) {
        String current = amount(device.ratedResidualCurrentA(), Unit.RESIDUAL_A);
        String delay = device.delay() == RcdDelay.SELECTIVE ? " " + wording.word(RcdDelay.SELECTIVE) : "";
        return current + delay + " " + word(device.type());
    }

    /** Such as "RCD 40 A 30 mA A". */
    String residualWithRating(ResidualDevice device) {
        Double rated = device.ratedCurrentA();
        return rated == null
                ? wording.text("diagram.rcd", residual(device))
                : wording.text("diagram.rcd.rated", amount(rated, Unit.A), residual(device));
    }

    /** Such as "3×2.5 mm² 14 m"; nothing where a thing sits directly at the one before it. */
    String cable(Fed thing) {
        Cable cable = thing.cable();
        if (cable == null) return "";
        List<Conductor> conductors = thing.conductors();
        String count = conductors == null ? UNKNOWN : String.valueOf(conductors.size());
        return count + "×" + amount(cable.crossSectionMm2(), Unit.MM2) + " " + amount(cable.lengthM(), Unit.M);
    }

    /** Such as "L1" or "L1 L2 L3". */
    String lines(Fed thing) {
        List<Conductor> conductors = thing.conductors();
        if (conductors == null) return UNKNOWN;
        List<String> lines = new ArrayList<>();
        for (Conductor conductor : conductors) if (conductor.isLine()) lines.add(wording.word(conductor));
        return String.join(" ", lines);
    }

    /** Such as "3/N 230/400 V". */
    String voltage(Supply supply) {
        Double voltage = supply.nominalVoltageV();
        if (supply.lines() == null || voltage == null) return UNKNOWN;
        return supply.lines() == SupplyLines.ONE
                ? "1/N " + wording.amount(voltage, Unit.V)
                : "3/N " + wording.amount(voltage, Unit.RATIO) + "/"
                        // Line to line is √3 of line to neutral; the trade says 400 V for 230 V.
                        + wording.amount(5.0 * Math.round(voltage * Math.sqrt(3) / 5), Unit.V);
    }

    /** Whether an island source feeds a circuit while the grid is dead; follows from the netlist, not from its place. */
    boolean staysOn(Circuit circuit) {
        return installation.staysOn(circuit);
    }

    private boolean isBehindSwitch(Circuit circuit) {
        return installation.islandingSwitches().stream()
                .anyMatch(device -> installation.isBehind(circuit, device.id()));
    }

    /** What must not be overlooked at a circuit: a neutral from elsewhere, a neutral shared. */
    String caution(Fed thing) {
        List<String> cautions = new ArrayList<>(0);
        ThingId neutral = thing.neutralFrom();
        if (neutral != null && !neutral.equals(thing.fedFrom()))
            cautions.add(wording.text("diagram.neutralFrom", PhraseArg.name(neutral)));
        if (thing instanceof Circuit circuit) {
            if (anythingStaysOn && isBehindSwitch(circuit) && !staysOn(circuit))
                cautions.add(wording.text("diagram.notFed"));
            List<ThingId> shared = circuit.sharedNeutralWith();
            if (shared != null && !shared.isEmpty())
                cautions.add(wording.text("diagram.neutralShared", PhraseArg.names(shared)));
        }
        return String.join(" · ", cautions);
    }

    String measuringNeutral(Meter meter) {
        if (!Boolean.TRUE.equals(meter.needsMeasuringNeutral())) return "";
        ThingId from = meter.measuringNeutralFrom();
        if (from == null) return wording.text("diagram.measuringNeutral.none");
        return wording.text("diagram.measuringNeutral", name(from), amount(meter.measuringNeutralFuseA(), Unit.A));
    }

    String inverterPower(Inverter inverter) {
        return wording.text(
                "diagram.inverter", amount(inverter.ratedPowerVa(), Unit.VA), amount(inverter.lineCurrentA(), Unit.A));
    }

    String text(String key, String... texts) {
        return wording.text(key, texts);
    }

    /** The isolators of a source, in the order in which they are written. */
    List<Isolator> isolators(ThingId source) {
        return installation.all(Isolator.class).stream()
                .filter(isolator -> Objects.equals(isolator.isolates(), source))
                .toList();
    }
}
