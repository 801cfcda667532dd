package tideover.engine.network.house;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.network.Impedances;
import tideover.engine.network.flow.FourWireNetwork;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.flow.PowerLoad;
import tideover.engine.site.Conductor;
import tideover.engine.site.Inverter;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;

/** The closed edges of the netlist in one state as a network, with the sources that form a voltage in it. */
public final class HouseNetwork {

    private static final int NONE = -1;

    /** Of an inverter whose maker's figure nobody has noted, line to neutral [V]. */
    private static final double NOMINAL_VOLTAGE_V = 230;

    /**
     * Share of rated voltage a forming inverter gives up at rated power where several form one voltage, so that they
     * share the load by their ratings (own choice; droop controls lie in the range of 1 to 5 %).
     */
    private static final double SHARING_RATIO = 0.02;

    private final Installation installation;
    private final View view;
    private final int[] points;
    private final int[] branches;
    private final Map<ThingId, int[]> feeds;
    private final List<SourceBranch> sources;
    private final List<HouseLoad> loads;
    private final FourWireNetwork network;

    /**
     * A source on one line.
     *
     * @param source the grid as {@code supply}, or an inverter
     * @param branch its branch; current counts out of it
     */
    public record SourceBranch(ThingId source, Conductor line, int branch) {}

    /**
     * A network of a state.
     *
     * @param live  sources that form a voltage; others of the state are taken as off
     * @param loads what is drawn or fed beside the sources; those of things that are not there are left out
     */
    public HouseNetwork(
            Installation installation,
            View view,
            Impedances impedances,
            GridSource grid,
            List<ThingId> live,
            List<HouseLoad> loads) {
        this(installation, view, impedances, grid, live, loads, List.of());
    }

    /**
     * A network of a state in which something is broken.
     *
     * @param interrupted edges that do not conduct although they should
     */
    public HouseNetwork(
            Installation installation,
            View view,
            Impedances impedances,
            GridSource grid,
            List<ThingId> live,
            List<HouseLoad> loads,
            List<Edge> interrupted) {
        this.installation = installation;
        this.view = view;
        feeds = new HashMap<>();
        points = new int[installation.nodeCount()];
        Arrays.fill(points, NONE);
        branches = new int[installation.edges().size()];
        Arrays.fill(branches, NONE);
        FourWireNetwork.Builder builder = FourWireNetwork.builder();
        int star = builder.point();
        for (Edge edge : installation.edges())
            if (view.isClosed(edge) && !interrupted.contains(edge)) stamp(edge, impedances, star, builder);
        sources = List.copyOf(addSources(grid, star, live, builder));
        List<HouseLoad> placed = new ArrayList<>(loads.size());
        for (PowerLoad load : place(loads, placed)) builder.load(load);
        this.loads = List.copyOf(placed);
        network = builder.build();
    }

    private HouseNetwork(HouseNetwork other, List<HouseLoad> loads, FourWireNetwork network) {
        installation = other.installation;
        view = other.view;
        points = other.points;
        branches = other.branches;
        feeds = other.feeds;
        sources = other.sources;
        this.loads = loads;
        this.network = network;
    }

    /** The same network with other loads; nothing where one of them lies where this one has no room for it. */
    Optional<HouseNetwork> findWithLoads(List<HouseLoad> others) {
        List<HouseLoad> placed = new ArrayList<>(others.size());
        List<PowerLoad> powers = place(others, placed);
        for (PowerLoad load : powers) if (!network.hasRoomFor(load)) return Optional.empty();
        return Optional.of(new HouseNetwork(this, List.copyOf(placed), network.withLoads(powers)));
    }

    private List<PowerLoad> place(List<HouseLoad> wanted, List<HouseLoad> placed) {
        List<PowerLoad> powers = new ArrayList<>(wanted.size());
        for (HouseLoad load : wanted)
            load.in(this).ifPresent(power -> {
                powers.add(power);
                placed.add(load);
            });
        return powers;
    }

    private void stamp(Edge edge, Impedances impedances, int star, FourWireNetwork.Builder builder) {
        boolean toEarth = edge.part() == Edge.Part.NETWORK_EARTH || edge.part() == Edge.Part.ELECTRODE;
        // The network's neutral is earthed at its star point, before the impedance of the network.
        int from = edge.part() == Edge.Part.NETWORK_EARTH ? star : pointOf(edge.from(), builder);
        int to = toEarth ? FourWireNetwork.EARTH : pointOf(edge.to(), builder);
        branches[edge.index()] =
                builder.branch(from, to, new Phasor(impedances.resistanceOhm(edge), impedances.reactanceOhm(edge)));
    }

    private int pointOf(int node, FourWireNetwork.Builder builder) {
        if (points[node] == NONE) points[node] = builder.point();
        return points[node];
    }

    private List<SourceBranch> addSources(
            GridSource grid, int star, List<ThingId> live, FourWireNetwork.Builder builder) {
        List<SourceBranch> all = new ArrayList<>();
        int neutral = pointOf(installation.neutralTerminal(ThingId.SUPPLY), builder);
        builder.branch(star, neutral, Phasor.of(grid.neutralOhm()));
        int forming = live.size() - (live.contains(ThingId.SUPPLY) ? 1 : 0);
        for (ThingId id : live) {
            if (id.equals(ThingId.SUPPLY)) {
                for (Conductor line : installation.lines(id))
                    add(id, line, star, grid.voltageV(), grid.lineOhm(), builder, all);
            } else if (installation.findFed(id).orElse(null) instanceof Inverter inverter) {
                double voltageV = inverter.islandVoltageV() == null ? NOMINAL_VOLTAGE_V : inverter.islandVoltageV();
                int common = points[installation.neutralTerminal(id)];
                if (common == NONE) common = builder.point();
                for (Conductor line : installation.lines(id))
                    add(id, line, common, voltageV, sharingOhm(inverter, voltageV, forming), builder, all);
            }
        }
        return all;
    }

    private double sharingOhm(Inverter inverter, double voltageV, int forming) {
        Double ratedVa = inverter.ratedPowerVa();
        if (forming < 2 || ratedVa == null || ratedVa <= 0) return 0;
        return SHARING_RATIO
                * voltageV
                * voltageV
                * installation.lines(inverter.id()).size()
                / ratedVa;
    }

    private void add(
            ThingId source,
            Conductor line,
            int neutral,
            double voltageV,
            double ohm,
            FourWireNetwork.Builder builder,
            List<SourceBranch> all) {
        int terminal = points[installation.node(source, Terminals.OUTGOING, line)];
        if (terminal == NONE) return;
        all.add(new SourceBranch(
                source, line, builder.source(neutral, terminal, rotated(line, voltageV), Phasor.of(ohm))));
    }

    private static Phasor rotated(Conductor line, double voltageV) {
        return Phasor.polar(voltageV, line == Conductor.L1 ? 0 : line == Conductor.L2 ? -120 : 120);
    }

    /** The network itself. */
    public FourWireNetwork network() {
        return network;
    }

    /** The state shown. */
    public View view() {
        return view;
    }

    /** The netlist behind it. */
    public Installation installation() {
        return installation;
    }

    /** Sources of voltage, line by line. */
    public List<SourceBranch> sources() {
        return sources;
    }

    /** Loads in the order of the network's own. */
    public List<HouseLoad> loads() {
        return loads;
    }

    /** The point of a terminal; -1 where nothing conducts there. */
    public int point(ThingId thing, Terminals side, Conductor conductor) {
        return points[installation.node(thing, side, conductor)];
    }

    /** The point at a thing's own end where its operating current returns: N, else PEN; -1 where there is neither. */
    public int neutral(ThingId thing) {
        int neutral = point(thing, Terminals.OUTGOING, Conductor.N);
        return neutral != NONE ? neutral : point(thing, Terminals.OUTGOING, Conductor.PEN);
    }

    /** The point of exposed parts at a thing: PE, else PEN; -1 where there is neither. */
    public int protective(ThingId thing) {
        int protective = point(thing, Terminals.OUTGOING, Conductor.PE);
        return protective != NONE ? protective : point(thing, Terminals.OUTGOING, Conductor.PEN);
    }

    /** The branch of an edge; -1 where it is open. */
    public int branch(Edge edge) {
        return branches[edge.index()];
    }

    /** The branch of one conductor of a thing's supply cable; -1 where it has none. */
    public int feed(ThingId thing, Conductor conductor) {
        return feeds.computeIfAbsent(thing, this::findFeeds)[conductor.ordinal()];
    }

    private int[] findFeeds(ThingId thing) {
        int[] found = new int[Conductor.values().length];
        for (Conductor conductor : Conductor.values())
            found[conductor.ordinal()] =
                    installation.findFeed(thing, conductor).map(this::branch).orElse(NONE);
        return found;
    }
}
