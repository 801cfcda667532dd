package tideover.engine.network.house;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.network.flow.Phasor;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.ThingId;

/**
 * What stands at a thing's own end and flows in its supply cable.
 *
 * @param place                  which thing
 * @param source                 what feeds it; of several the first
 * @param voltageV               of each live line to neutral, r.m.s. [V]; empty without a neutral
 * @param earthVoltageV          of each conductor to remote earth, r.m.s. [V]
 * @param currentA               of each conductor of the supply cable, r.m.s. [A]
 * @param neutralThirdHarmonicA  third harmonics of its lines, added up in the neutral [A]; 0 of a single line, whose neutral
 *                               carries what the line does
 * @param neutralShiftV          neutral to protective conductor, r.m.s. [V]; nothing where either is missing
 * @param dropRatio              largest drop against the source's terminals, over nominal; negative is a rise
 * @param unbalanceRatio         negative over positive sequence of the voltages; nothing without three lines and neutral
 * @param lossW                  lost in the supply cable [W]
 */
public record PlaceFlow(
        ThingId place,
        ThingId source,
        Map<Conductor, Double> voltageV,
        Map<Conductor, Double> earthVoltageV,
        Map<Conductor, Double> currentA,
        double neutralThirdHarmonicA,
        @Nullable Double neutralShiftV,
        @Nullable Double dropRatio,
        @Nullable Double unbalanceRatio,
        double lossW) {
    public PlaceFlow {
        voltageV = Collections.unmodifiableMap(new TreeMap<>(voltageV));
        earthVoltageV = Collections.unmodifiableMap(new TreeMap<>(earthVoltageV));
        currentA = Collections.unmodifiableMap(new TreeMap<>(currentA));
    }

    /** Current of a conductor of the supply cable, r.m.s. [A]; 0 where it has none. */
    public double currentA(Conductor conductor) {
        return currentA.getOrDefault(conductor, 0.0);
    }

    /** Current of the neutral with the third harmonics in it, r.m.s. [A]. */
    public double neutralA() {
        return Math.hypot(Math.max(currentA(Conductor.N), currentA(Conductor.PEN)), neutralThirdHarmonicA);
    }

    /** All things that have voltage, in the order of the netlist. */
    static List<PlaceFlow> all(HouseFlow flow) {
        Installation installation = flow.house().installation();
        Map<ThingId, Double> harmonicsA = thirdHarmonicsA(flow);
        List<PlaceFlow> all = new ArrayList<>();
        for (Fed thing : installation.all(Fed.class)) {
            List<Conductor> lines = flow.house().view().liveLines(thing);
            if (lines.isEmpty()) continue;
            double harmonicA = lines.size() == 1 ? 0 : harmonicsA.getOrDefault(thing.id(), 0.0);
            all.add(of(flow, thing, lines, harmonicA));
        }
        return List.copyOf(all);
    }

    private static PlaceFlow of(HouseFlow flow, Fed thing, List<Conductor> lines, double thirdHarmonicA) {
        ThingId source = flow.house().view().findSource(thing).orElseThrow();
        Map<Conductor, Double> voltageV = new EnumMap<>(Conductor.class);
        for (Conductor line : lines)
            flow.findVoltageV(thing.id(), line).ifPresent(phasor -> voltageV.put(line, phasor.magnitude()));
        Map<Conductor, Double> earthVoltageV = new EnumMap<>(Conductor.class);
        Map<Conductor, Double> currentA = new EnumMap<>(Conductor.class);
        double lossW = 0;
        for (Conductor conductor : Conductor.values()) {
            Optional<Phasor> toEarthV = flow.findVoltageToEarthV(thing.id(), conductor);
            toEarthV.ifPresent(phasor -> earthVoltageV.put(conductor, phasor.magnitude()));
            int branch = flow.house().feed(thing.id(), conductor);
            if (branch < 0) continue;
            currentA.put(conductor, flow.flow().currentA(branch).magnitude());
            lossW += flow.flow().lossW(branch);
        }
        return new PlaceFlow(
                thing.id(),
                source,
                voltageV,
                earthVoltageV,
                currentA,
                thirdHarmonicA,
                orNull(flow.findNeutralShiftV(thing.id())),
                thing instanceof Inverter && source.equals(thing.id())
                        ? Double.valueOf(0)
                        : orNull(flow.findDropRatio(thing.id(), source)),
                orNull(flow.findUnbalanceRatio(thing.id())),
                lossW);
    }

    /**
     * Third harmonics of all loads, on the way of their neutral back to the source [A]: they are in phase on all lines.
     *
     * @see "IEC 60364-5-52:2009, Annex E"
     */
    private static Map<ThingId, Double> thirdHarmonicsA(HouseFlow flow) {
        View view = flow.house().view();
        Map<ThingId, Double> sumsA = new HashMap<>();
        for (HouseLoad load : flow.house().loads()) {
            if (!(load.thing() instanceof Circuit circuit) || circuit.load() == null) continue;
            Double ratio = circuit.load().thirdHarmonicRatio();
            if (ratio == null || ratio == 0) continue;
            double lineA = Math.hypot(load.powerW(), load.reactiveVar()) / load.nominalVoltageV();
            // Of three equal lines this adds up to what HarmonicTable.neutralCurrentA gives.
            double addedA = ratio * lineA;
            view.findSource(circuit)
                    .flatMap(source -> view.findNeutralPath(source, circuit.id()))
                    .ifPresent(path -> path.feeds().forEach(fed -> sumsA.merge(fed.id(), addedA, Double::sum)));
        }
        return sumsA;
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? Double.valueOf(value.getAsDouble()) : null;
    }
}
