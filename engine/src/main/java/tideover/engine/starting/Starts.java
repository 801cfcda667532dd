package tideover.engine.starting;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.network.Demand;
import tideover.engine.network.StartTable;
import tideover.engine.network.house.FlowStudy;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.StartKind;
import tideover.engine.site.ThingId;

/** Starts of the motors that stay on, and what comes back at once; computes and never judges. */
public final class Starts {

    private static final OperatingState ISLAND = OperatingState.ISLAND_GRID_DEAD;
    /** Halvings of a search: a thousandth of an ampere on any house. */
    private static final int HALVINGS = 18;
    /** Power factor of small motors that run loaded (common practice). */
    private static final double RUNNING_POWER_FACTOR_RATIO = 0.8;

    private final Installation installation;
    private final Demand demand;
    private final FlowStudy flows;
    private final Motors motors;
    private final VoltageDips voltages;
    private final Map<OperatingState, List<SourceGroup>> groups = new EnumMap<>(OperatingState.class);

    /**
     * @param flows of the same house
     * @param table what motors draw whose own figures nobody has stated
     */
    public Starts(Installation installation, Demand demand, FlowStudy flows, StartTable table) {
        this.installation = installation;
        this.demand = demand;
        this.flows = flows;
        motors = new Motors(installation, demand, table);
        voltages = new VoltageDips(installation, flows);
    }

    /** The islands of the house: nearly always one. */
    public List<SourceGroup> islands() {
        return groups(ISLAND);
    }

    /**
     * The island a thing belongs to.
     *
     * @throws IllegalArgumentException if no island source feeds it
     */
    SourceGroup island(Fed thing) {
        return group(thing, ISLAND);
    }

    /** Line to neutral [V]. */
    public double nominalVoltageV() {
        return flows.nominalVoltageV();
    }

    /** What is asked of a motor and not stated. */
    public List<FactId> missing(Circuit circuit) {
        return motors.missing(circuit);
    }

    /** How a motor starts on the sources of its island, on top of what the rest of the house draws. */
    public Start start(Circuit circuit) {
        SourceGroup group = group(circuit, ISLAND);
        List<FactId> needed = new ArrayList<>(demand.missing(circuit));
        needed.addAll(group.missing());
        if (!needed.isEmpty()) return new Start.Unknown(needed);
        Motor worst = motors.find(circuit, Bound.WORST).orElseThrow();
        Peak peak = peak(group, worst, Bound.WORST);
        if (peak.isCarried()) return new Start.Carried(worst, peak);
        List<FactId> missing = missing(group, circuit);
        if (!missing.isEmpty()) {
            Motor best = motors.find(circuit, Bound.BEST).orElseThrow();
            if (peak(group, best, Bound.BEST).isCarried()) return new Start.Unknown(missing);
        }
        return new Start.Exceeds(worst, peak, largest(group, worst, Double.POSITIVE_INFINITY));
    }

    private List<FactId> missing(SourceGroup group, Circuit circuit) {
        List<FactId> missing = new ArrayList<>(motors.missing(circuit));
        for (Circuit other : group.circuits()) missing.addAll(demand.missing(other));
        for (Capacity capacity : group.capacities()) missing.addAll(capacity.missing());
        return missing.stream().distinct().toList();
    }

    /** What a motor does to the voltages of the boards and to its own. */
    public Dips dips(Circuit circuit, OperatingState state, Bound bound) {
        Optional<Motor> motor = motors.find(circuit, bound);
        if (motor.isEmpty()) return new Dips.Unknown(demand.missing(circuit));
        if (motor.get().startsWithoutInrush()) return new Dips.Solved(motor.get(), List.of());
        return voltages.findObstacle(circuit, state)
                .orElseGet(() -> dips(group(circuit, state), motor.get(), state, bound));
    }

    /** Whether it is known what the sources of an island give for good. */
    boolean isKnown(SourceGroup island) {
        return island.missing().isEmpty();
    }

    /**
     * The largest motor of a kind that starts at the terminals of a board or an inverter, by the worst figures of the table.
     *
     * @param lines           the lines it lies on
     * @param largestDipRatio what the voltage of no board may fall by, over nominal
     * @throws IllegalArgumentException if no island source feeds the place, or what one gives is not known
     */
    public LargestStart largest(Fed place, List<Conductor> lines, StartKind start, double largestDipRatio) {
        SourceGroup group = group(place, lines, ISLAND);
        List<FactId> missing = group.missing();
        if (!missing.isEmpty()) throw new IllegalArgumentException("%s is not known".formatted(missing));
        return largest(
                group,
                motors.typical(place, lines, start, 1, RUNNING_POWER_FACTOR_RATIO, Bound.WORST),
                largestDipRatio);
    }

    private LargestStart largest(SourceGroup group, Motor kind, double largestDipRatio) {
        double bySourceA =
                largestA(group, kind, motor -> peak(group, motor, Bound.WORST).isCarried());
        Motor largest = kind.withRunningA(bySourceA);
        if (largestDipRatio == Double.POSITIVE_INFINITY || dipsNoMore(group, largest, largestDipRatio))
            return new LargestStart(bySourceA, largest.startA(), kind.timeS(), LargestStart.LimitedBy.SOURCE);
        double byDipA = largestA(
                group,
                kind,
                motor -> peak(group, motor, Bound.WORST).isCarried() && dipsNoMore(group, motor, largestDipRatio));
        return new LargestStart(byDipA, kind.withRunningA(byDipA).startA(), kind.timeS(), LargestStart.LimitedBy.DIP);
    }

    /** The largest running current with which a kind of motor starts well; a larger motor never starts easier [A]. */
    private static double largestA(SourceGroup group, Motor kind, Predicate<Motor> startsWell) {
        double possibleA = 0;
        double impossibleA = 0;
        for (Capacity capacity : group.capacities()) impossibleA = Math.max(impossibleA, capacity.continuousA());
        impossibleA *= 1 + 1e-6;
        for (int i = 0; i < HALVINGS; i++) {
            Motor tried = kind.withRunningA((possibleA + impossibleA) / 2);
            if (startsWell.test(tried)) possibleA = tried.runningA();
            else impossibleA = tried.runningA();
        }
        return possibleA;
    }

    private boolean dipsNoMore(SourceGroup group, Motor motor, double largestDipRatio) {
        return dips(group, motor, ISLAND, Bound.WORST) instanceof Dips.Solved solved
                && (solved.all().isEmpty() || solved.all().get(0).ratio() <= largestDipRatio);
    }

    /** What comes back by itself when an island forms its voltage anew, and whether it can all come at once. */
    public PickUp pickUp(SourceGroup island) {
        List<FactId> needed = new ArrayList<>(island.missing());
        for (Circuit circuit : island.circuits()) needed.addAll(demand.missing(circuit));
        if (!needed.isEmpty()) return new PickUp.Unknown(needed);
        PickUp worst = search(island, Bound.WORST).pickUp();
        if (worst instanceof PickUp.AllAtOnce) return worst;
        List<FactId> missing = new ArrayList<>();
        for (Capacity capacity : island.capacities()) missing.addAll(capacity.missing());
        for (Circuit circuit : island.circuits()) {
            if (Motors.has(circuit)) missing.addAll(motors.missing(circuit));
            if (circuit.load() == null || circuit.load().kind() == null) missing.add(circuit.fact("load.kind"));
        }
        if (missing.isEmpty() || search(island, Bound.BEST).pickUp() instanceof PickUp.NotPossible) return worst;
        return new PickUp.Unknown(missing.stream().distinct().toList());
    }

    private PickUpSearch search(SourceGroup island, Bound bound) {
        return new PickUpSearch(PickUpItem.of(island, demand, motors, bound), island.capacities(), bound);
    }

    private Peak peak(SourceGroup group, Motor motor, Bound bound) {
        Currents before = Base.beside(motor, group, demand, bound).currents();
        Currents starting = before.plus(motor.starting());
        Currents running = before.plus(motor.running());
        Peak tightest = null;
        for (Capacity capacity : group.capacities()) {
            if (!capacity.concerns(motor.lines())) continue;
            Peak start = capacity.peak(before, starting, motor.timeS(), bound);
            if (start.isTighterThan(tightest)) tightest = start;
            Peak after = capacity.peak(before, running, Double.POSITIVE_INFINITY, bound);
            if (!after.isCarried() && after.isTighterThan(tightest)) tightest = after;
        }
        if (tightest == null)
            throw new IllegalArgumentException(motor.thing().id() + " lies on no line of its sources");
        return tightest;
    }

    private Dips dips(SourceGroup group, Motor motor, OperatingState state, Bound bound) {
        return voltages.dips(motor, Base.beside(motor, group, demand, bound).loads(flows), state);
    }

    private List<SourceGroup> groups(OperatingState state) {
        return groups.computeIfAbsent(
                state, each -> SourceGroup.of(installation, installation.in(each), flows.nominalVoltageV()));
    }

    private SourceGroup group(Fed thing, OperatingState state) {
        return group(thing, installation.lines(thing.id()), state);
    }

    private SourceGroup group(Fed thing, List<Conductor> lines, OperatingState state) {
        View view = installation.in(state);
        for (SourceGroup group : groups(state))
            for (Conductor line : lines)
                for (ThingId source : view.sourcesAt(thing.id(), line))
                    if (group.sources().contains(source)) return group;
        throw new IllegalArgumentException("nothing feeds %s in the state %s".formatted(thing.id(), state));
    }
}
