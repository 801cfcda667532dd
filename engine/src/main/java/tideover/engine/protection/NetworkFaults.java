package tideover.engine.protection;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.installation.Path;
import tideover.engine.installation.View;
import tideover.engine.network.flow.FaultFlow;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.flow.Settled;
import tideover.engine.network.flow.Short;
import tideover.engine.network.house.HouseNetwork;
import tideover.engine.rules.Trace;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PerLine;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;

/**
 * Faults in the whole network: all ways of the current there and back at once, and what each device on the way sees of
 * it. Loads are left out, as IEC 60909-0 does. An inverter that would have to give more than it can lowers its voltage until
 * it gives just that.
 *
 * @see "IEC 60909-0:2016, 4.2 and 7; IEC 60364-4-41:2005+A1:2017, 411.4.4 and 411.5.3"
 */
final class NetworkFaults implements FaultCourses {

    /** Below this nothing flows that any device or person would notice [A]. */
    private static final double NOTHING_A = 1e-4;

    private final Installation installation;
    private final PathFaults paths;
    private final Clearings clearings;
    private final FaultNetworks networks;
    private final Map<OperatingState, Map<ThingId, List<FaultStory>>> stories = new EnumMap<>(OperatingState.class);
    /** States in which the contacts stand alike share their simple stories, and so the exact ones. */
    private final IdentityHashMap<FaultStory, FaultStory> exactOf = new IdentityHashMap<>();

    private final Map<OperatingState, Map<ThingId, OptionalDouble>> largest = new EnumMap<>(OperatingState.class);

    NetworkFaults(Installation installation, Tables tables, FaultAssumptions assumptions) {
        this.installation = installation;
        paths = new PathFaults(installation, tables, assumptions);
        clearings = new Clearings(installation, tables, assumptions.safeVoltageV());
        networks = new FaultNetworks(installation, tables, assumptions, paths.impedances());
    }

    /**
     * {@inheritDoc}
     *
     * <p>Where a loop was measured, or facts are missing, the simple method has the last word: it says which.
     */
    @Override
    public List<FaultStory> lineToEarth(Fed thing, OperatingState state) {
        return stories.computeIfAbsent(state, s -> new HashMap<>())
                .computeIfAbsent(thing.id(), id -> exact(thing, state));
    }

    private List<FaultStory> exact(Fed thing, OperatingState state) {
        List<FaultStory> simple = paths.lineToEarth(thing, state);
        List<FaultStory> told = new ArrayList<>(simple.size());
        for (int i = 0; i < simple.size(); i++) {
            FaultStory story = exactOf.get(simple.get(i));
            for (int j = 0; j < i && story == null; j++)
                if (simple.get(i).runsLike(simple.get(j)))
                    story = told.get(j).on(simple.get(i).line());
            if (story == null) story = exact(simple.get(i), thing, state);
            exactOf.put(simple.get(i), story);
            told.add(story);
        }
        return List.copyOf(told);
    }

    private FaultStory exact(FaultStory simple, Fed thing, OperatingState state) {
        boolean measured = thing instanceof Circuit circuit
                && circuit.loopImpedanceOhm() != null
                && simple.source().equals(ThingId.SUPPLY);
        if (measured || !simple.missing().isEmpty() || simple.loopOhm() == Double.POSITIVE_INFINITY) return simple;
        FaultCourse course = course(
                new Spot(FaultKind.LINE_TO_EARTH, thing, List.of(simple.line()), 0),
                installation.in(state),
                List.of(simple.source()),
                Extreme.SMALLEST);
        return course == null ? simple : simple.by(course);
    }

    @Override
    public void explain(FaultStory story, Fed thing, OperatingState state, Trace trace) {
        paths.explain(story, thing, state, trace);
    }

    @Override
    public OptionalDouble findLargestA(ThingId place, OperatingState state) {
        return largest.computeIfAbsent(state, s -> new HashMap<>())
                .computeIfAbsent(place, id -> computeLargestA(id, state));
    }

    private OptionalDouble computeLargestA(ThingId place, OperatingState state) {
        if (state.isGridLive() && installation.supply().prospectiveCurrentA() == null) return OptionalDouble.empty();
        if (place.equals(ThingId.SUPPLY)) {
            Double prospectiveA = installation.supply().prospectiveCurrentA();
            return prospectiveA == null
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(prospectiveA + networks.addedByInvertersA(installation.in(state)));
        }
        Fed thing = installation.findFed(place).orElse(null);
        if (thing == null) return OptionalDouble.empty();
        double largestA = 0;
        View view = installation.in(state);
        List<Conductor> live = view.liveLines(thing);
        for (FaultKind kind : FaultKind.values())
            for (List<Conductor> lines : lines(kind, live)) {
                List<ThingId> sources = view.sourcesAt(place, lines.get(0));
                largestA = Math.max(largestA, currentA(new Spot(kind, thing, lines, 0), view, sources));
            }
        return largestA == 0 ? OptionalDouble.empty() : OptionalDouble.of(largestA);
    }

    @Override
    public List<FaultCourse> courses(
            FaultKind kind, Fed place, OperatingState state, Extreme extreme, double faultOhm) {
        View view = installation.in(state);
        List<Conductor> live = view.liveLines(place);
        List<FaultCourse> told = new ArrayList<>(3);
        for (List<Conductor> lines : lines(kind, live)) {
            List<ThingId> sources = view.sourcesAt(place.id(), lines.get(0));
            FaultCourse course = course(new Spot(kind, place, lines, faultOhm), view, sources, extreme);
            if (course != null) told.add(course);
        }
        return List.copyOf(told);
    }

    /** Where a fault is and between what. */
    private record Spot(FaultKind kind, Fed place, List<Conductor> lines, double faultOhm) {}

    private static List<List<Conductor>> lines(FaultKind kind, List<Conductor> live) {
        List<List<Conductor>> all = new ArrayList<>(3);
        switch (kind) {
            case LINE_TO_EARTH, LINE_TO_NEUTRAL -> {
                for (Conductor line : live) all.add(List.of(line));
            }
            case LINE_TO_LINE -> {
                for (int i = 0; i < live.size(); i++)
                    for (int j = i + 1; j < live.size(); j++) all.add(List.of(live.get(i), live.get(j)));
            }
            case THREE_LINES -> {
                if (live.size() == 3) all.add(live);
            }
        }
        return all;
    }

    /** The largest current of a fault without the rest of its story [A]. */
    private double currentA(Spot spot, View view, List<ThingId> sources) {
        FaultNetworks.Ready ready = networks.ready(view, sources, Extreme.LARGEST);
        List<Short> shorts = shorts(spot, ready.house());
        if (shorts.isEmpty()) return 0;
        FaultFlow driven = driven(ready, shorts, spot);
        double currentA = Settled.of(limit(ready.house(), driven).ratio * currentA(driven, shorts.size()));
        if (currentA < NOTHING_A) currentA = 0;
        boolean fromGrid = findInverter(sources.get(0)) == null;
        return fromGrid ? currentA + networks.addedByInvertersA(view) : currentA;
    }

    private static FaultFlow driven(FaultNetworks.Ready ready, List<Short> shorts, Spot spot) {
        if (shorts.size() == 1) return ready.faults().fault(shorts);
        return ready.faults()
                .fault(shorts.get(0).from(), shorts.get(0).to(), shorts.get(1).to(), spot.faultOhm());
    }

    private @Nullable FaultCourse course(Spot spot, View view, List<ThingId> sources, Extreme extreme) {
        FaultNetworks.Ready ready = networks.ready(view, sources, extreme);
        List<Short> shorts = shorts(spot, ready.house());
        if (shorts.isEmpty()) return null;
        FaultFlow driven = driven(ready, shorts, spot);
        // Three lines: each carries what the voltage to neutral drives.
        double drivingV = driven.drivingVoltageV(0) / (shorts.size() == 1 ? 1 : Math.sqrt(3));
        double loopOhm = Settled.of(drivingV / currentA(driven, shorts.size()));
        Limit limit = limit(ready.house(), driven);
        FaultFlow flow = limit.ratio < 1 ? driven.lowered(limit.ratio) : driven;
        double currentA = Settled.of(currentA(flow, shorts.size()));
        if (currentA < NOTHING_A) {
            currentA = 0;
            loopOhm = Double.POSITIVE_INFINITY;
        }
        ThingId source = sources.get(0);
        Conductor line = spot.lines().get(0);
        Path there = view.findLinePath(source, spot.place().id(), line).orElseThrow();
        Inverter inverter = findInverter(source);
        Clearings.Notes notes = new Clearings.Notes();
        networks.addMissing(there, extreme, notes.missing);
        view.findNeutralPath(source, spot.place().id())
                .ifPresent(back -> networks.addMissing(back, extreme, notes.missing));
        if (inverter != null && inverter.faultCurrentA() == null && inverter.lineCurrentA() == null)
            notes.missing.add(inverter.fact("faultCurrentA"));
        Clearing clearing = clearings.clearing(
                there,
                new Seen(ready.house(), flow, spot.lines()),
                inverter,
                currentA == 0 ? null : limit.inverter,
                notes,
                Trace.NONE);
        if (extreme == Extreme.LARGEST && inverter == null) currentA += networks.addedByInvertersA(view);
        List<FactId> missing = List.copyOf(notes.missing);
        return new FaultCourse(
                spot.kind(),
                extreme,
                view.state(),
                spot.place().id(),
                spot.lines(),
                source,
                limit.ratio < 1 ? FaultCourse.SourceAnswer.LIMITED : FaultCourse.SourceAnswer.IN_FULL,
                currentA,
                sourceA(ready.house(), flow),
                loopOhm,
                voltageLeftV(ready.house(), flow, source),
                touchVoltageV(ready.house(), flow, spot.place()),
                ready.linkA(flow),
                branchA(flow, ready.house().feed(spot.place().id(), Conductor.PE)),
                ready.earthA(flow),
                notes.bands,
                clearing,
                networks.dark(view, source, clearing),
                missing);
    }

    private static List<Short> shorts(Spot spot, HouseNetwork house) {
        ThingId place = spot.place().id();
        int first = house.point(place, Terminals.OUTGOING, spot.lines().get(0));
        return switch (spot.kind()) {
            case LINE_TO_EARTH -> to(first, house.protective(place), spot.faultOhm());
            case LINE_TO_NEUTRAL -> to(first, house.neutral(place), spot.faultOhm());
            case LINE_TO_LINE ->
                to(first, house.point(place, Terminals.OUTGOING, spot.lines().get(1)), spot.faultOhm());
            case THREE_LINES -> {
                int second = house.point(place, Terminals.OUTGOING, spot.lines().get(1));
                int third = house.point(place, Terminals.OUTGOING, spot.lines().get(2));
                yield List.of(new Short(first, second, spot.faultOhm()), new Short(second, third, spot.faultOhm()));
            }
        };
    }

    private static List<Short> to(int from, int to, double ohm) {
        return from < 0 || to < 0 ? List.of() : List.of(new Short(from, to, ohm));
    }

    /** Through the fault; of three lines the largest. */
    private static double currentA(FaultFlow flow, int shorts) {
        if (shorts == 1) return flow.shortCurrentA(0).magnitude();
        Phasor first = flow.shortCurrentA(0);
        Phasor third = flow.shortCurrentA(1);
        double secondA = third.minus(first).magnitude();
        return Math.max(secondA, Math.max(first.magnitude(), third.magnitude()));
    }

    /** How far the inverters must lower their voltage, and which of them sets the measure. */
    private static final class Limit {
        private double ratio = 1;
        private @Nullable Inverter inverter;
    }

    private Limit limit(HouseNetwork house, FaultFlow driven) {
        Limit limit = new Limit();
        for (HouseNetwork.SourceBranch branch : house.sources()) {
            Inverter inverter = findInverter(branch.source());
            if (inverter == null) continue;
            double askedA = driven.currentA(branch.branch()).magnitude();
            double givenA = PathFaults.limitA(inverter);
            if (askedA <= 0 || givenA > askedA * limit.ratio) continue;
            limit.ratio = givenA / askedA;
            limit.inverter = inverter;
        }
        return limit;
    }

    private @Nullable Inverter findInverter(ThingId source) {
        return installation.findFed(source).orElse(null) instanceof Inverter inverter ? inverter : null;
    }

    private static PerLine sourceA(HouseNetwork house, FaultFlow flow) {
        PerLine sum = PerLine.ZERO;
        for (HouseNetwork.SourceBranch branch : house.sources()) {
            double currentA = branchA(flow, branch.branch());
            sum = sum.plus(
                    switch (branch.line()) {
                        case L1 -> new PerLine(currentA, 0, 0);
                        case L2 -> new PerLine(0, currentA, 0);
                        case L3 -> new PerLine(0, 0, currentA);
                        case N, PE, PEN -> PerLine.ZERO;
                    });
        }
        return sum;
    }

    private static double voltageLeftV(HouseNetwork house, FaultFlow flow, ThingId source) {
        int neutral = house.neutral(source);
        double leftV = Double.POSITIVE_INFINITY;
        for (HouseNetwork.SourceBranch branch : house.sources()) {
            if (!branch.source().equals(source) || neutral < 0) continue;
            int line = house.point(source, Terminals.OUTGOING, branch.line());
            leftV = Math.min(
                    leftV, flow.voltageV(line).minus(flow.voltageV(neutral)).magnitude());
        }
        return leftV == Double.POSITIVE_INFINITY ? 0 : Settled.of(leftV);
    }

    private static double touchVoltageV(HouseNetwork house, FaultFlow flow, Fed place) {
        int protective = house.protective(place.id());
        return protective < 0 ? 0 : Settled.of(flow.voltageV(protective).magnitude());
    }

    private static double branchA(FaultFlow flow, int branch) {
        return branch < 0 ? 0 : Settled.of(flow.currentA(branch).magnitude());
    }

    /** What the devices see: overcurrent devices the largest of the faulty lines, RCDs the sum of all but the PE. */
    private record Seen(HouseNetwork house, FaultFlow flow, List<Conductor> lines) implements Clearings.Currents {

        @Override
        public double throughA(ThingId holder) {
            double largestA = 0;
            if (holder.equals(ThingId.SUPPLY)) {
                for (HouseNetwork.SourceBranch branch : house.sources())
                    if (branch.source().equals(holder)) largestA = Math.max(largestA, branchA(flow, branch.branch()));
                return largestA;
            }
            for (Conductor line : lines) largestA = Math.max(largestA, branchA(flow, house.feed(holder, line)));
            return largestA;
        }

        @Override
        public double residualA(Fed holder) {
            Phasor sum = Phasor.ZERO;
            for (Conductor conductor : Conductor.values()) {
                int branch = conductor == Conductor.PE ? -1 : house.feed(holder.id(), conductor);
                if (branch >= 0) sum = sum.plus(flow.currentA(branch));
            }
            double residualA = Settled.of(sum.magnitude());
            return residualA < NOTHING_A ? 0 : residualA;
        }
    }
}
