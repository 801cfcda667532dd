package tideover.engine.network.flow;

import java.util.ArrayList;
import java.util.List;

/**
 * A network of points, branches between them and loads. A point is one conductor at one place; point {@link #EARTH} is
 * remote earth at 0 V. Immutable; copies with other loads share what was worked out about its shape.
 */
public final class FourWireNetwork {

    /** The point of remote earth. */
    public static final int EARTH = 0;

    /** Below any contact; a smaller impedance would only cost figures [Ω] (own choice). */
    private static final double JOINING_OHM = 1e-7;

    final int pointCount;
    final int[] from;
    final int[] to;
    final double[] ohmR;
    final double[] ohmX;
    final double[] emfR;
    final double[] emfX;
    private final boolean[] joins;
    private final boolean[] coupled;
    final List<Coupling> couplings;
    final LoadTable loads;
    final Shape shape;

    /** With the loads as they were when the network was built. */
    final LoadedFactors loaded;

    /** Branches that act on each other: their common admittance, by row and column of the listed branches. */
    record Coupling(List<Integer> branches, List<List<Phasor>> siemens) {}

    private FourWireNetwork(Builder builder) {
        pointCount = builder.pointCount;
        int count = builder.branches.size();
        from = new int[count];
        to = new int[count];
        ohmR = new double[count];
        ohmX = new double[count];
        emfR = new double[count];
        emfX = new double[count];
        for (int i = 0; i < count; i++) {
            Builder.Branch branch = builder.branches.get(i);
            from[i] = branch.from;
            to[i] = branch.to;
            ohmR[i] = branch.ohm.real();
            ohmX[i] = branch.ohm.imaginary();
            emfR[i] = branch.emfV.real();
            emfX[i] = branch.emfV.imaginary();
        }
        couplings = List.copyOf(builder.couplings);
        coupled = new boolean[count];
        for (Coupling coupling : couplings) for (int branch : coupling.branches()) coupled[branch] = true;
        joins = new boolean[count];
        for (int i = 0; i < count; i++) joins[i] = !coupled[i] && ohmR[i] + Math.abs(ohmX[i]) < JOINING_OHM;
        loads = new LoadTable(builder.loads);
        shape = new Shape(this);
        loaded = new LoadedFactors(this);
    }

    private FourWireNetwork(FourWireNetwork other, LoadTable loads, boolean sharesFactors) {
        pointCount = other.pointCount;
        from = other.from;
        to = other.to;
        ohmR = other.ohmR;
        ohmX = other.ohmX;
        emfR = other.emfR;
        emfX = other.emfX;
        joins = other.joins;
        coupled = other.coupled;
        couplings = other.couplings;
        shape = other.shape;
        this.loads = loads;
        loaded = sharesFactors ? other.loaded : new LoadedFactors(this);
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Number of points, earth included; points are 0 to this, less one. */
    public int pointCount() {
        return pointCount;
    }

    /** Number of branches, in the order in which they were added. */
    public int branchCount() {
        return from.length;
    }

    /** Number of loads, in the order in which they were added. */
    public int loadCount() {
        return loads.count();
    }

    /** Where a branch begins; its current counts from here. */
    public int from(int branch) {
        return from[branch];
    }

    /** Where a branch ends. */
    public int to(int branch) {
        return to[branch];
    }

    /** Impedance of a branch [Ω]; of several side by side the own one. */
    public Phasor ohm(int branch) {
        return new Phasor(ohmR[branch], ohmX[branch]);
    }

    /** E.m.f. of a branch, r.m.s. [V]; 0 where it is no source. */
    public Phasor emfV(int branch) {
        return new Phasor(emfR[branch], emfX[branch]);
    }

    /** One of the loads. */
    public PowerLoad load(int load) {
        return loads.load(load);
    }

    /**
     * The same network with other powers of its loads.
     *
     * @param powerW      active power of each load at its rated voltage [W]; negative feeds
     * @param reactiveVar reactive power of each load [var]; positive lags
     * @throws IllegalArgumentException if the numbers are not as many as the loads
     */
    public FourWireNetwork withPowers(double[] powerW, double[] reactiveVar) {
        return new FourWireNetwork(this, loads.withPowers(powerW, reactiveVar), true);
    }

    /**
     * The same network with other loads; only numbers are worked out anew.
     *
     * @throws IllegalArgumentException if one lies where this network {@linkplain #hasRoomFor has no room}
     */
    public FourWireNetwork withLoads(List<PowerLoad> others) {
        return new FourWireNetwork(this, new LoadTable(others), false);
    }

    /** Whether a load lies where this network has one, or where something else connects its two points. */
    public boolean hasRoomFor(PowerLoad load) {
        return shape.hasRoomFor(load.from(), load.to());
    }

    /** Voltages and currents with all loads. */
    public FlowResult solve() {
        return new FlowSolver(this).solve();
    }

    /** The network without its loads, ready for faults anywhere in it. */
    public FaultNetwork faults() {
        return new FaultNetwork(this);
    }

    /** Collects points, branches and loads. */
    public static final class Builder {
        private int pointCount = 1;
        private final List<Branch> branches = new ArrayList<>();
        private final List<Coupling> couplings = new ArrayList<>();
        private final List<PowerLoad> loads = new ArrayList<>();

        private record Branch(int from, int to, Phasor ohm, Phasor emfV) {}

        /** A further point. */
        public int point() {
            return pointCount++;
        }

        /** Further points; the number of the first. */
        public int points(int count) {
            int first = pointCount;
            pointCount += count;
            return first;
        }

        /**
         * A conductor, link, contact or electrode.
         *
         * @param ohm its impedance, 0 allowed [Ω]
         * @return number of the branch
         * @throws IllegalArgumentException if a point is unknown, or the impedance is no number or has a negative resistance
         */
        public int branch(int from, int to, Phasor ohm) {
            return source(from, to, Phasor.ZERO, ohm);
        }

        /**
         * A source: an e.m.f. that lifts {@code to} above {@code from}, behind an impedance.
         *
         * @param emfV r.m.s. [V]
         * @param ohm  its impedance, 0 allowed [Ω]
         * @return number of the branch
         * @throws IllegalArgumentException as in {@link #branch}
         */
        public int source(int from, int to, Phasor emfV, Phasor ohm) {
            requirePoint(from);
            requirePoint(to);
            if (!ohm.isFinite() || ohm.real() < 0 || !emfV.isFinite())
                throw new IllegalArgumentException(
                        "%s ohm, %s V between points %d and %d: finite numbers are needed and no "
                                        .formatted(ohm, emfV, from, to)
                                + "negative resistance");
            branches.add(new Branch(from, to, ohm, emfV));
            return branches.size() - 1;
        }

        /**
         * Conductors side by side whose currents act on each other.
         *
         * @param from where each begins
         * @param to   where each ends
         * @param ohm  impedances, own ones in the diagonal, mutual ones beside it, symmetric [Ω]
         * @return number of the first branch; the others follow
         * @throws IllegalArgumentException if the sizes differ, or the impedances are singular, as of a cable without length
         */
        public int coupled(List<Integer> from, List<Integer> to, List<List<Phasor>> ohm) {
            if (from.size() != to.size() || from.size() != ohm.size())
                throw new IllegalArgumentException("%d beginnings, %d ends and %d rows of impedances do not go together"
                        .formatted(from.size(), to.size(), ohm.size()));
            List<List<Phasor>> siemens = Inverse.of(ohm);
            int first = branches.size();
            List<Integer> own = new ArrayList<>();
            for (int i = 0; i < from.size(); i++)
                own.add(branch(from.get(i), to.get(i), ohm.get(i).get(i)));
            couplings.add(new Coupling(List.copyOf(own), siemens));
            return first;
        }

        /** A load or, with negative power, an inverter that follows; its number. */
        public int load(PowerLoad load) {
            requirePoint(load.from());
            requirePoint(load.to());
            loads.add(load);
            return loads.size() - 1;
        }

        public FourWireNetwork build() {
            return new FourWireNetwork(this);
        }

        private void requirePoint(int point) {
            if (point < 0 || point >= pointCount)
                throw new IllegalArgumentException("there is no point %d among %d".formatted(point, pointCount));
        }
    }

    /** Whether a branch has no impedance worth the name, so that it joins its points to one. */
    boolean joins(int branch) {
        return joins[branch];
    }

    /** Whether a branch belongs to a coupling. */
    boolean isCoupled(int branch) {
        return coupled[branch];
    }
}
