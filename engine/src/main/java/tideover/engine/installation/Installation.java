package tideover.engine.installation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Board;
import tideover.engine.site.ByPass;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Electrode;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.InverterRole;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Meter;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Origin;
import tideover.engine.site.Origins;
import tideover.engine.site.Site;
import tideover.engine.site.Status;
import tideover.engine.site.Supply;
import tideover.engine.site.Terminals;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** A site resolved to one netlist: terminals as nodes, conductors, contacts and links as edges. */
public final class Installation {

    private final Site site;
    private final Origins origins;
    private final Map<ThingId, Thing> things;
    private @Nullable Map<ThingId, List<FactId>> assumed;
    private final Map<ThingId, Status> statuses;
    private final Netlist netlist;
    private final List<OperatingState> states;
    private final Map<OperatingState, View> views = new EnumMap<>(OperatingState.class);
    private final List<Reach> reaches = new ArrayList<>();
    private final Map<Class<?>, List<? extends Thing>> byType = new HashMap<>();

    private Installation(Site site) {
        this.site = site;
        this.origins = site.origins();
        this.things = site.planned();
        this.statuses = site.statuses();
        this.netlist = new Wiring(site.house().supply(), things).netlist();
        this.states = possibleStates();
    }

    /**
     * Resolves a site as planned. Facts that are missing leave gaps, which {@link #gaps} names; they never stop it.
     *
     * @throws IllegalArgumentException if a thing is fed in a circle, which no site file can say
     */
    public static Installation of(Site site) {
        return new Installation(site);
    }

    /** The site it was resolved from. */
    public Site site() {
        return site;
    }

    /** Where facts come from. */
    public Origins origins() {
        return origins;
    }

    /** The grid connection point. */
    public Supply supply() {
        return site.house().supply();
    }

    /** All things as planned, in the order in which they are written. */
    public Collection<Thing> things() {
        return things.values();
    }

    /** A planned thing, also place, grid operator and supply. */
    public Optional<Thing> find(ThingId id) {
        if (id.equals(ThingId.SUPPLY)) return Optional.of(supply());
        if (id.equals(ThingId.GRID_OPERATOR)) return Optional.of(site.house().gridOperator());
        if (id.equals(ThingId.PLACE)) return Optional.of(site.house().place());
        return Optional.ofNullable(things.get(id));
    }

    /** A planned thing in the path of power. */
    public Optional<Fed> findFed(ThingId id) {
        return things.get(id) instanceof Fed fed ? Optional.of(fed) : Optional.empty();
    }

    /** All planned things of one kind. */
    @SuppressWarnings("unchecked") // filled with instances of the key only
    public <T extends Thing> List<T> all(Class<T> type) {
        return (List<T>) byType.computeIfAbsent(
                type,
                t -> things.values().stream()
                        .filter(t::isInstance)
                        .map(type::cast)
                        .toList());
    }

    public List<Circuit> circuits() {
        return all(Circuit.class);
    }

    public List<Inverter> inverters() {
        return all(Inverter.class);
    }

    /** Inverters that can form the voltage of an island. */
    public List<Inverter> formingInverters() {
        return inverters().stream()
                .filter(i -> i.role() == InverterRole.GRID_FORMING)
                .toList();
    }

    public List<IslandingSwitch> islandingSwitches() {
        return all(IslandingSwitch.class);
    }

    public List<NeutralEarthSwitch> neutralEarthSwitches() {
        return all(NeutralEarthSwitch.class);
    }

    public List<Board> boards() {
        return all(Board.class);
    }

    public List<Meter> meters() {
        return all(Meter.class);
    }

    public List<ByPass> byPasses() {
        return all(ByPass.class);
    }

    public List<Electrode> electrodes() {
        return all(Electrode.class);
    }

    /** What becomes of a thing; supply and place count as existing. */
    public Status status(ThingId id) {
        return statuses.getOrDefault(id, Status.EXISTING);
    }

    /** The operating states this installation has: island ones with an island source, by-passed with a by-pass. */
    public List<OperatingState> states() {
        return states;
    }

    private List<OperatingState> possibleStates() {
        List<OperatingState> possible = new ArrayList<>(List.of(OperatingState.CONNECTED));
        if (!formingInverters().isEmpty()) {
            possible.add(OperatingState.ISLAND_GRID_DEAD);
            possible.add(OperatingState.ISLAND_GRID_WAITING);
            possible.add(OperatingState.DARK);
        }
        if (!byPasses().isEmpty()) possible.add(OperatingState.BY_PASSED);
        return List.copyOf(possible);
    }

    /** Whether an island source feeds at least one line of a thing while the grid is dead. */
    public boolean staysOn(Fed thing) {
        return in(OperatingState.ISLAND_GRID_DEAD).findSource(thing).isPresent();
    }

    /** Whether the plan or island operation touches a thing, so that it is judged: new, altered, or staying on. */
    public boolean isTouched(Fed thing) {
        return status(thing.id()) != Status.EXISTING || staysOn(thing);
    }

    /** The installation in one operating state, its contacts in position. */
    public View in(OperatingState state) {
        View known = views.get(state);
        if (known != null) return known;
        View view = new View(this, state, reach(View.closed(this, state)));
        views.put(state, view);
        return view;
    }

    private Reach reach(boolean[] closed) {
        for (Reach known : reaches) if (known.isFor(closed)) return known;
        Reach reach = new Reach(this, closed);
        reaches.add(reach);
        return reach;
    }

    /** All edges. */
    public List<Edge> edges() {
        return netlist.edges();
    }

    /** Number of nodes; nodes are 0 to this, less one. */
    public int nodeCount() {
        return netlist.nodeCount();
    }

    /** Edges at a node, by index. */
    public int[] edgesAt(int node) {
        return netlist.edgesAt(node);
    }

    /** The node of a terminal. The supply has outgoing terminals only. */
    public int node(ThingId fed, Terminals side, Conductor conductor) {
        return netlist.node(fed, side, conductor);
    }

    /** The edge of one conductor of a thing's supply cable. */
    public Optional<Edge> findFeed(ThingId fed, Conductor conductor) {
        int node = netlist.node(fed, Terminals.INCOMING, conductor);
        for (int index : netlist.edgesAt(node)) {
            Edge edge = netlist.edges().get(index);
            if (edge.part() == Edge.Part.FEED && edge.to() == node) return Optional.of(edge);
        }
        return Optional.empty();
    }

    /** The line conductors at a thing, stated or taken from what feeds it. */
    public List<Conductor> lines(ThingId fed) {
        return netlist.lines(fed);
    }

    /** The main earthing terminal. */
    public int mainEarth() {
        return netlist.mainEarth();
    }

    /** The node of the neutral terminal of a source: N, or PEN where the supply brings one. */
    public int neutralTerminal(ThingId source) {
        return netlist.neutralTerminal(source);
    }

    /**
     * Facts without which it is not known how a thing is connected: place and conductors of each thing on its way from
     * the supply, and the poles of the islanding switch on it.
     */
    public List<FactId> gaps(Fed thing) {
        return netlist.gaps(thing.id());
    }

    /**
     * Facts about how a thing is connected, its whole way from the supply, that are stated but only assumed: nobody has
     * looked.
     */
    public List<FactId> assumedWiring(ThingId thing) {
        Map<ThingId, List<FactId>> known = assumed;
        if (known == null) assumed = known = findAssumed();
        return netlist.alongTheWay(thing, known);
    }

    private Map<ThingId, List<FactId>> findAssumed() {
        Map<ThingId, List<FactId>> all = new HashMap<>();
        for (Fed fed : all(Fed.class)) {
            List<FactId> wiring = new ArrayList<>(4);
            if (fed.fedFrom() != null) wiring.add(fed.fact("fedFrom"));
            if (fed.neutralFrom() != null) wiring.add(fed.fact("neutralFrom"));
            if (fed.conductors() != null) wiring.add(fed.fact("conductors"));
            if (fed instanceof IslandingSwitch device && device.poles() != null) wiring.add(fed.fact("poles"));
            wiring.removeIf(fact -> origins.of(fact) != Origin.ASSUMED);
            if (!wiring.isEmpty()) all.put(fed.id(), wiring);
        }
        return all;
    }

    /** Whether a thing lies on the way of another from the supply, lines only. */
    public boolean isBehind(Fed thing, ThingId other) {
        return netlist.ancestors(thing.id()).contains(other);
    }

    /** What a thing is fed through, from itself to the supply, itself included. */
    public List<ThingId> wayFromSupply(ThingId thing) {
        List<ThingId> way = new ArrayList<>();
        way.add(thing);
        way.addAll(netlist.ancestors(thing));
        return way;
    }

    /** Whether what is fed through this thing includes a source. */
    public Set<ThingId> sourcesBehind(ThingId thing) {
        return netlist.sourcesBehind(thing);
    }
}
