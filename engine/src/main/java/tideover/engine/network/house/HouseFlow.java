package tideover.engine.network.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tideover.engine.installation.Edge;
import tideover.engine.network.flow.Flow;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.flow.PowerLoad;
import tideover.engine.network.flow.Settled;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PerLine;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;

/** Voltages and currents of the house in one state. */
public final class HouseFlow implements HouseFlowResult {

    private final HouseNetwork house;
    private final Regime regime;
    private final Flow flow;
    private final double nominalVoltageV;

    HouseFlow(HouseNetwork house, Regime regime, Flow flow, double nominalVoltageV) {
        this.house = house;
        this.regime = regime;
        this.flow = flow;
        this.nominalVoltageV = nominalVoltageV;
    }

    public OperatingState state() {
        return house.view().state();
    }

    public Regime regime() {
        return regime;
    }

    /** The network behind it. */
    public HouseNetwork house() {
        return house;
    }

    /** The solution of that network. */
    public Flow flow() {
        return flow;
    }

    /** Voltage of a conductor at a thing's own end to remote earth, r.m.s.; nothing where it has no such conductor. */
    public Optional<Phasor> findVoltageToEarthV(ThingId thing, Conductor conductor) {
        int point = house.point(thing, Terminals.OUTGOING, conductor);
        return point < 0 ? Optional.empty() : Optional.of(flow.voltageV(point));
    }

    /** Voltage of a line at a thing's own end to its neutral, r.m.s.; nothing where either is missing. */
    public Optional<Phasor> findVoltageV(ThingId thing, Conductor line) {
        int point = house.point(thing, Terminals.OUTGOING, line);
        int neutral = house.neutral(thing);
        return point < 0 || neutral < 0 ? Optional.empty() : Optional.of(flow.voltageV(point, neutral));
    }

    /** Voltage between two lines at a thing's own end, r.m.s.; nothing where either is missing. */
    public Optional<Phasor> findVoltageV(ThingId thing, Conductor one, Conductor other) {
        int point = house.point(thing, Terminals.OUTGOING, one);
        int reference = house.point(thing, Terminals.OUTGOING, other);
        return point < 0 || reference < 0 ? Optional.empty() : Optional.of(flow.voltageV(point, reference));
    }

    /** Voltage of the neutral at a thing to its protective conductor, r.m.s. [V]; nothing where either is missing. */
    public OptionalDouble findNeutralShiftV(ThingId thing) {
        int neutral = house.neutral(thing);
        int protective = house.protective(thing);
        return neutral < 0 || protective < 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        Settled.of(flow.voltageV(neutral, protective).magnitude()));
    }

    /** Current of one conductor of a thing's supply cable towards the thing, r.m.s. [A]; 0 where it has none. */
    public Phasor currentA(Fed thing, Conductor conductor) {
        int branch = house.feed(thing.id(), conductor);
        return branch < 0 ? Phasor.ZERO : flow.currentA(branch);
    }

    /** Current of an edge from its beginning to its end, r.m.s. [A]; 0 where it is open. */
    public Phasor currentA(Edge edge) {
        int branch = house.branch(edge);
        return branch < 0 ? Phasor.ZERO : flow.currentA(branch);
    }

    /** Currents of the lines of a thing's supply cable, r.m.s. [A]. */
    public PerLine lineCurrentsA(Fed thing) {
        return new PerLine(
                Settled.of(currentA(thing, Conductor.L1).magnitude()),
                Settled.of(currentA(thing, Conductor.L2).magnitude()),
                Settled.of(currentA(thing, Conductor.L3).magnitude()));
    }

    /** Largest deviation of a line's voltage at a thing below that at a reference thing, over nominal; negative is a rise. */
    public OptionalDouble findDropRatio(ThingId thing, ThingId reference) {
        double worst = Double.NEGATIVE_INFINITY;
        List<Conductor> lines = house.installation().lines(thing);
        for (Conductor line : lines) {
            Optional<Phasor> here = findVoltageV(thing, line);
            Optional<Phasor> there = findVoltageV(reference, line);
            if (here.isPresent() && there.isPresent())
                worst = Math.max(worst, (there.get().magnitude() - here.get().magnitude()) / nominalVoltageV);
        }
        if (house.neutral(thing) < 0 && lines.size() > 1) {
            Optional<Phasor> here = findVoltageV(thing, lines.get(0), lines.get(1));
            Optional<Phasor> there = findVoltageV(reference, lines.get(0), lines.get(1));
            if (here.isPresent() && there.isPresent())
                worst = (there.get().magnitude() - here.get().magnitude()) / (Math.sqrt(3) * nominalVoltageV);
        }
        return worst == Double.NEGATIVE_INFINITY ? OptionalDouble.empty() : OptionalDouble.of(Settled.of(worst));
    }

    /**
     * Unbalance of the voltages at a thing with three lines: negative over positive sequence.
     *
     * @return ratio; nothing where there are not three lines and a neutral, or no voltage
     * @see "EN 50160:2010, 4.2.4; IEC 61000-4-30:2015, 5.7"
     */
    public OptionalDouble findUnbalanceRatio(ThingId thing) {
        Optional<Phasor> l1 = findVoltageV(thing, Conductor.L1);
        Optional<Phasor> l2 = findVoltageV(thing, Conductor.L2);
        Optional<Phasor> l3 = findVoltageV(thing, Conductor.L3);
        if (l1.isEmpty() || l2.isEmpty() || l3.isEmpty()) return OptionalDouble.empty();
        Phasor a = Phasor.polar(1, 120);
        Phasor a2 = Phasor.polar(1, -120);
        double positive =
                l1.get().plus(a.times(l2.get())).plus(a2.times(l3.get())).magnitude();
        double negative =
                l1.get().plus(a2.times(l2.get())).plus(a.times(l3.get())).magnitude();
        return positive < 1e-6 ? OptionalDouble.empty() : OptionalDouble.of(Settled.of(negative / positive));
    }

    /** What stands at each thing that has voltage and flows in its supply cable, in the order of the netlist. */
    public List<PlaceFlow> places() {
        return PlaceFlow.all(this);
    }

    /** Things at which so little voltage is left that what they feed no longer gets what it draws, each once. */
    public List<ThingId> starved() {
        List<ThingId> starved = new ArrayList<>(0);
        for (HouseLoad load : house.loads()) {
            ThingId thing = load.thing().id();
            double leastV = PowerLoad.LOW_VOLTAGE_RATIO * nominalVoltageV;
            boolean low = findVoltageV(thing, load.line())
                    .filter(voltage -> voltage.magnitude() < leastV)
                    .isPresent();
            if (low && !starved.contains(thing)) starved.add(thing);
        }
        return List.copyOf(starved);
    }

    /** Power lost in the house's conductors, links and earths [W]. */
    public double lossW() {
        double lossW = 0;
        for (Edge edge : house.installation().edges()) {
            int branch = house.branch(edge);
            if (branch >= 0) lossW += flow.lossW(branch);
        }
        return Settled.of(lossW);
    }

    /** What each source has to give, beside what it can. */
    public List<SourceLoading> sources() {
        List<SourceLoading> all = new ArrayList<>(2);
        for (ThingId source : house.view().sources()) {
            double[] currentA = new double[3];
            double powerW = 0;
            double powerVa = 0;
            for (HouseNetwork.SourceBranch branch : house.sources()) {
                if (!branch.source().equals(source)) continue;
                currentA[branch.line().ordinal()] =
                        Settled.of(flow.currentA(branch.branch()).magnitude());
                Phasor power = flow.sourcePower(branch.branch());
                powerW += power.real();
                powerVa += power.magnitude();
            }
            Inverter inverter = house.installation().findFed(source).orElse(null) instanceof Inverter i ? i : null;
            all.add(new SourceLoading(
                    source,
                    new PerLine(currentA[0], currentA[1], currentA[2]),
                    Settled.of(powerW),
                    Settled.of(powerVa),
                    inverter == null ? null : inverter.lineCurrentA(),
                    inverter == null ? null : inverter.ratedPowerVa()));
        }
        return all;
    }
}
