package tideover.engine.protection;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.installation.Path;
import tideover.engine.installation.View;
import tideover.engine.network.EarthReturn;
import tideover.engine.network.Impedances;
import tideover.engine.rules.Trace;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Supply;
import tideover.engine.site.ThingId;

/**
 * Faults by the simple method: one way of the line there, one way back, absolute values added, and for an inverter the
 * current it gives at most.
 *
 * @see "IEC 60364-4-41:2005+A1:2017, 411.4.4 and 411.5.3"
 */
final class PathFaults implements FaultStudy {

    private static final double NOMINAL_VOLTAGE_V = 230;

    private final Installation installation;
    private final FaultAssumptions assumptions;
    private final Impedances impedances;
    private final Map<OperatingState, Map<ThingId, Feeding>> feedings = new EnumMap<>(OperatingState.class);
    private final Map<OperatingState, Map<ThingId, List<FaultStory>>> stories = new EnumMap<>(OperatingState.class);
    private final IdentityHashMap<Path, Run> runs = new IdentityHashMap<>();
    private final Clearings clearings;

    PathFaults(Installation installation, Tables tables, FaultAssumptions assumptions) {
        this.installation = installation;
        this.assumptions = assumptions;
        this.impedances = new Impedances(installation, tables.conductors(), assumptions.loopTemperatureDegC());
        this.clearings = new Clearings(installation, tables, assumptions.safeVoltageV());
    }

    /** Impedances at the temperature of loops. */
    Impedances impedances() {
        return impedances;
    }

    @Override
    public List<FaultStory> lineToEarth(Fed thing, OperatingState state) {
        return stories.computeIfAbsent(state, s -> new HashMap<>())
                .computeIfAbsent(thing.id(), id -> tell(thing, installation.in(state)));
    }

    private List<FaultStory> tell(Fed thing, View view) {
        List<FaultStory> told = new ArrayList<>(3);
        for (Conductor line : view.lines(thing))
            for (ThingId source : view.sourcesAt(thing.id(), line))
                told.add(story(fed(view, source).stories, thing, view, line, source));
        return List.copyOf(told);
    }

    private FaultStory story(
            Map<ThingId, Map<Conductor, FaultStory>> known, Fed thing, View view, Conductor line, ThingId source) {
        Map<Conductor, FaultStory> ofThing = known.computeIfAbsent(thing.id(), t -> new EnumMap<>(Conductor.class));
        FaultStory story = ofThing.get(line);
        if (story != null) return story;
        Path there = view.findLinePath(source, thing.id(), line).orElseThrow();
        for (FaultStory other : ofThing.values())
            if (there.runsLike(
                    view.findLinePath(source, thing.id(), other.line()).orElseThrow())) story = other.on(line);
        if (story == null) story = tell(thing, view, line, source, Trace.NONE);
        ofThing.put(line, story);
        return story;
    }

    /** What a source feeds does not depend on the state but on where the contacts stand. */
    private Feeding fed(View view, ThingId source) {
        Map<ThingId, Feeding> known = feedings.get(view.state());
        if (known == null) {
            for (Map.Entry<OperatingState, Map<ThingId, Feeding>> other : feedings.entrySet())
                if (installation.in(other.getKey()).hasContactsOf(view)) known = other.getValue();
            if (known == null) known = new HashMap<>();
            feedings.put(view.state(), known);
        }
        return known.computeIfAbsent(
                source, id -> new Feeding(new EarthReturn(installation, view, impedances, id), new HashMap<>()));
    }

    private record Feeding(EarthReturn earthReturn, Map<ThingId, Map<Conductor, FaultStory>> stories) {}

    @Override
    public void explain(FaultStory story, Fed thing, OperatingState state, Trace trace) {
        if (trace.isOn()) tell(thing, installation.in(state), story.line(), story.source(), trace);
    }

    private FaultStory tell(Fed thing, View view, Conductor line, ThingId source, Trace trace) {
        Path there = view.findLinePath(source, thing.id(), line).orElseThrow();
        Path back = fed(view, source).earthReturn.find(thing).orElse(null);
        Clearings.Notes notes = new Clearings.Notes();
        List<FactId> facts = notes.facts;
        List<FactId> missing = notes.missing;
        Inverter inverter = installation.findFed(source).orElse(null) instanceof Inverter i ? i : null;
        double voltageV = voltageV(inverter, facts);
        double loopOhm = loopOhm(thing, there, back, inverter == null, facts, missing, trace);
        double drivenA = voltageV / loopOhm;
        double limitA = inverter == null ? Double.POSITIVE_INFINITY : limitA(inverter, facts, missing);
        double currentA = back == null ? 0 : Math.min(drivenA, limitA);
        if (trace.isOn()) {
            if (inverter != null) trace.line("calculation.fault.sourceLimit", name(source), amount(limitA, Unit.A));
            trace.line(
                    "calculation.fault.current",
                    amount(voltageV, Unit.V),
                    amount(loopOhm, Unit.OHM),
                    amount(currentA, Unit.A));
        }
        Inverter limited = drivenA >= limitA && back != null ? inverter : null;
        Clearing clearing =
                clearings.clearing(there, alongOneWay(view, there, back, currentA), inverter, limited, notes, trace);
        Clearing asRead = inverter == null && isMeasured(thing) ? asRead(thing, view, there, back) : clearing;
        return new FaultStory(
                source,
                line,
                system(back),
                voltageV,
                loopOhm,
                electrodeOhm(back),
                currentA,
                clearing,
                asRead,
                notes.acting,
                facts,
                missing);
    }

    /** The same current flows through all devices on the way; an RCD sees it unless its neutral takes it back. */
    private static Clearings.Currents alongOneWay(View view, Path there, @Nullable Path back, double currentA) {
        return new Clearings.Currents() {
            @Override
            public double throughA(ThingId holder) {
                return currentA;
            }

            @Override
            public double residualA(Fed holder) {
                return back == null || view.isByPassedByNeutral(holder.id(), there.source()) ? 0 : currentA;
            }
        };
    }

    private static boolean isMeasured(Fed thing) {
        return thing instanceof Circuit circuit && circuit.loopImpedanceOhm() != null;
    }

    /** How a measured loop would end without the margin for instrument and temperature. */
    private Clearing asRead(Fed thing, View view, Path there, @Nullable Path back) {
        Double readOhm = ((Circuit) thing).loopImpedanceOhm();
        double currentA = readOhm == null || back == null ? 0 : nominalVoltageV() / readOhm;
        return clearings.clearing(
                there, alongOneWay(view, there, back, currentA), null, null, new Clearings.Notes(), Trace.NONE);
    }

    private double nominalVoltageV() {
        Double stated = installation.supply().nominalVoltageV();
        return stated == null ? NOMINAL_VOLTAGE_V : stated;
    }

    private double voltageV(@Nullable Inverter inverter, List<FactId> facts) {
        if (inverter != null) {
            facts.add(inverter.fact("islandVoltageV"));
            return inverter.islandVoltageV() == null ? NOMINAL_VOLTAGE_V : inverter.islandVoltageV();
        }
        facts.add(installation.supply().fact("nominalVoltageV"));
        return nominalVoltageV() * assumptions.voltageFactorRatio();
    }

    private double loopOhm(
            Fed thing,
            Path there,
            @Nullable Path back,
            boolean fromGrid,
            List<FactId> facts,
            List<FactId> missing,
            Trace trace) {
        if (back == null) {
            trace.line("calculation.fault.noReturn");
            return Double.POSITIVE_INFINITY;
        }
        if (fromGrid && thing instanceof Circuit circuit && circuit.loopImpedanceOhm() != null) {
            facts.add(circuit.fact("loopImpedanceOhm"));
            // The margin of a measured loop lies in the share it may reach; the voltage factor is taken back out.
            double loopOhm =
                    circuit.loopImpedanceOhm() * assumptions.voltageFactorRatio() / assumptions.measuredLoopRatio();
            trace.line(
                    "calculation.fault.measuredLoop",
                    amount(circuit.loopImpedanceOhm(), Unit.OHM),
                    amount(assumptions.measuredLoopRatio(), Unit.RATIO),
                    amount(loopOhm, Unit.OHM));
            return loopOhm;
        }
        double thereOhm = sum(there, facts, missing);
        double backOhm = sum(back, facts, missing);
        double sourceOhm = fromGrid ? gridOhm(facts, missing) : 0;
        double loopOhm = sourceOhm + thereOhm + backOhm;
        if (trace.isOn())
            trace.line(
                    "calculation.fault.loop",
                    amount(sourceOhm, Unit.OHM),
                    amount(thereOhm, Unit.OHM),
                    amount(backOhm, Unit.OHM),
                    amount(loopOhm, Unit.OHM));
        return loopOhm;
    }

    private double gridOhm(List<FactId> facts, List<FactId> missing) {
        Supply supply = installation.supply();
        facts.add(supply.fact("loopImpedanceOhm"));
        if (supply.loopImpedanceOhm() != null) return supply.loopImpedanceOhm();
        missing.add(supply.fact("loopImpedanceOhm"));
        return Impedances.UNMEASURED_NETWORK_OHM;
    }

    private double sum(Path path, List<FactId> facts, List<FactId> missing) {
        Run run = runs.get(path);
        if (run == null) {
            run = Run.of(path, impedances);
            runs.put(path, run);
        }
        facts.addAll(run.facts());
        for (FactId fact : run.missing()) if (!missing.contains(fact)) missing.add(fact);
        return run.totalOhm();
    }

    /** What a way adds to a loop, and the facts under it. */
    private record Run(double totalOhm, List<FactId> facts, List<FactId> missing) {

        static Run of(Path path, Impedances impedances) {
            double totalOhm = 0;
            List<FactId> facts = new ArrayList<>(8);
            List<FactId> missing = new ArrayList<>(0);
            for (Edge edge : path.edges()) {
                totalOhm += impedances.ohm(edge);
                missing.addAll(impedances.missing(edge));
                if (edge.part() == Edge.Part.FEED && ((Fed) edge.thing()).cable() != null) {
                    facts.add(edge.thing().fact("cable.lengthM"));
                    facts.add(edge.thing().fact("cable.crossSectionMm2"));
                }
                if (edge.part() == Edge.Part.ELECTRODE) facts.add(edge.thing().fact("resistanceOhm"));
                if (edge.part() == Edge.Part.NETWORK_EARTH)
                    facts.add(edge.thing().fact("networkElectrodeOhm"));
            }
            return new Run(totalOhm, facts, missing);
        }
    }

    /** The current an inverter gives into a fault; where its maker states none, what it gives all the time. */
    private static double limitA(Inverter inverter, List<FactId> facts, List<FactId> missing) {
        if (inverter.faultCurrentA() != null) {
            facts.add(inverter.fact("faultCurrentA"));
            return inverter.faultCurrentA();
        }
        if (inverter.lineCurrentA() != null) {
            facts.add(inverter.fact("lineCurrentA"));
            return inverter.lineCurrentA();
        }
        missing.add(inverter.fact("faultCurrentA"));
        return 0;
    }

    /** The same without taking down facts; nothing stated counts as nothing given [A]. */
    static double limitA(Inverter inverter) {
        if (inverter.faultCurrentA() != null) return inverter.faultCurrentA();
        return inverter.lineCurrentA() == null ? 0 : inverter.lineCurrentA();
    }

    private static EarthingSystem system(@Nullable Path back) {
        if (back == null) return EarthingSystem.IT;
        for (Edge edge : back.edges()) if (edge.part() == Edge.Part.ELECTRODE) return EarthingSystem.TT;
        return EarthingSystem.TN_S;
    }

    private double electrodeOhm(@Nullable Path back) {
        double ohm = 0;
        if (back != null)
            for (Edge edge : back.edges()) if (edge.part() == Edge.Part.ELECTRODE) ohm += impedances.ohm(edge);
        return ohm;
    }
}
