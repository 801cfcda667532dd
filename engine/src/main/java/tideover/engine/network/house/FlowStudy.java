package tideover.engine.network.house;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.network.Demand;
import tideover.engine.network.Impedances;
import tideover.engine.network.Share;
import tideover.engine.network.flow.Flow;
import tideover.engine.network.flow.FlowResult;
import tideover.engine.network.flow.NotConverged;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PerLine;
import tideover.engine.site.ThingId;

/** What flows in a house, state by state; computes and never judges. */
public final class FlowStudy {

    private final Installation installation;
    private final Impedances impedances;
    private final Demand demand;
    private final Map<OperatingState, Map<Regime, HouseFlowResult>> known = new EnumMap<>(OperatingState.class);
    private final Map<OperatingState, HouseNetwork> networks = new EnumMap<>(OperatingState.class);

    /** @param impedances of the conductors at their operating temperature */
    public FlowStudy(Installation installation, Impedances impedances, Demand demand) {
        this.installation = installation;
        this.impedances = impedances;
        this.demand = demand;
    }

    /** Nominal voltage, line to neutral [V]. */
    public double nominalVoltageV() {
        return demand.nominalVoltageV();
    }

    /** Facts without which the impedance of an edge is not known: what flows over it is not known either. */
    public List<FactId> missing(Edge edge) {
        return impedances.missing(edge);
    }

    /** What flows in one state at one extreme. */
    public HouseFlowResult flow(OperatingState state, Regime regime) {
        return known.computeIfAbsent(state, s -> new EnumMap<>(Regime.class))
                .computeIfAbsent(regime, r -> solve(network(state, loads(state, r)), r));
    }

    /**
     * What flows when one circuit draws its own design current in full beside the worst credible coincidence of the others:
     * what its voltage drop is judged by.
     */
    public HouseFlowResult flowWithFull(Circuit circuit, OperatingState state) {
        List<HouseLoad> loads = new ArrayList<>();
        boolean reduced = false;
        for (Share share : shares(state)) {
            boolean isOwn = share.circuit().id().equals(circuit.id());
            reduced |= isOwn && share.ratio() < 1;
            loads.add(load(share.circuit(), share.line(), isOwn ? share.currentA() : share.addedA()));
        }
        return reduced ? flow(state, loads) : flow(state, Regime.DRAWING);
    }

    /** What flows in one state with loads of one's own choice instead of those of a regime. */
    public HouseFlowResult flow(OperatingState state, List<HouseLoad> loads) {
        return solve(network(state, loads), Regime.DRAWING);
    }

    /**
     * What flows when the neutral of a thing's supply cable is interrupted while the house draws.
     *
     * @throws IllegalArgumentException if it has no neutral of its own
     */
    public HouseFlowResult withoutNeutral(Fed thing, OperatingState state) {
        Edge neutral = installation
                .findFeed(thing.id(), Conductor.N)
                .or(() -> installation.findFeed(thing.id(), Conductor.PEN))
                .orElseThrow(() -> new IllegalArgumentException(thing.id() + " has no neutral"));
        View view = installation.in(state);
        return solve(
                new HouseNetwork(
                        installation,
                        view,
                        impedances,
                        GridSource.usual(installation.supply(), demand.nominalVoltageV()),
                        view.sources(),
                        loads(state, Regime.DRAWING),
                        List.of(neutral)),
                Regime.DRAWING);
    }

    /** Facts about cables without which a voltage drop may be larger than computed. */
    public List<FactId> missingCables() {
        List<FactId> missing = new ArrayList<>(0);
        for (Edge edge : installation.edges())
            if (edge.part() == Edge.Part.FEED)
                for (FactId fact : impedances.missing(edge)) if (!missing.contains(fact)) missing.add(fact);
        return missing;
    }

    /** Worst credible coincidence of circuits, and what inverters feed. */
    public Demand demand() {
        return demand;
    }

    /** What an interrupted neutral does, cable by cable with several lines, the highest voltage first. */
    public List<LostNeutral> lostNeutrals(OperatingState state) {
        return new LostNeutrals(this, installation, state).all();
    }

    /** Facts without which what flows in a state is not known: of cables, loads and the network. */
    public List<FactId> missing(OperatingState state) {
        View view = installation.in(state);
        Set<FactId> missing = new LinkedHashSet<>();
        if (view.sources().contains(ThingId.SUPPLY) && installation.supply().loopImpedanceOhm() == null)
            missing.add(installation.supply().fact("loopImpedanceOhm"));
        for (Edge edge : installation.edges()) if (view.isClosed(edge)) missing.addAll(impedances.missing(edge));
        for (Circuit circuit : installation.circuits())
            if (view.findSource(circuit).isPresent()) missing.addAll(demand.missing(circuit));
        return List.copyOf(missing);
    }

    private HouseNetwork network(OperatingState state, List<HouseLoad> loads) {
        return networks.computeIfAbsent(state, this::networkWithRoom)
                .findWithLoads(loads)
                .orElseGet(() -> network(installation.in(state), loads));
    }

    /** With room for what any circuit or inverter may draw or feed. */
    private HouseNetwork networkWithRoom(OperatingState state) {
        View view = installation.in(state);
        List<HouseLoad> idle = new ArrayList<>();
        for (Fed thing : installation.all(Fed.class))
            if (thing instanceof Circuit || thing instanceof Inverter)
                for (Conductor line : installation.lines(thing.id()))
                    idle.add(new HouseLoad(thing, line, 0, 0, demand.nominalVoltageV()));
        return network(view, idle);
    }

    private HouseNetwork network(View view, List<HouseLoad> loads) {
        GridSource grid = GridSource.usual(installation.supply(), demand.nominalVoltageV());
        return new HouseNetwork(installation, view, impedances, grid, view.sources(), loads);
    }

    private HouseFlowResult solve(HouseNetwork house, Regime regime) {
        FlowResult result = house.network().solve();
        if (result instanceof Flow flow) return new HouseFlow(house, regime, flow, demand.nominalVoltageV());
        NotConverged failed = (NotConverged) result;
        ThingId worst = house.loads().get(failed.worstLoad()).thing().id();
        return new Unsolved(house.view().state(), regime, failed.iterations(), failed.residualA(), worst);
    }

    /** What is drawn or fed in a state at one extreme. */
    public List<HouseLoad> loads(OperatingState state, Regime regime) {
        return regime == Regime.DRAWING ? drawn(state) : fed(state);
    }

    /** What each circuit that has voltage in a state adds, and why so much: coincidence counts for what hangs on one source. */
    public List<Share> shares(OperatingState state) {
        View view = installation.in(state);
        Map<ThingId, List<Circuit>> bySource = new LinkedHashMap<>();
        for (Circuit circuit : installation.circuits())
            view.findSource(circuit)
                    .ifPresent(source -> bySource.computeIfAbsent(source, s -> new ArrayList<>())
                            .add(circuit));
        List<Share> shares = new ArrayList<>();
        for (List<Circuit> together : bySource.values()) shares.addAll(demand.shares(together));
        return shares;
    }

    private List<HouseLoad> drawn(OperatingState state) {
        List<HouseLoad> loads = new ArrayList<>();
        for (Share share : shares(state)) loads.add(load(share.circuit(), share.line(), share.addedA()));
        return loads;
    }

    /** A circuit that draws a current at nominal voltage on one of its lines. */
    public HouseLoad load(Circuit circuit, Conductor line, double currentA) {
        Double stated = circuit.load() == null ? null : circuit.load().powerFactorRatio();
        double cosPhi = stated == null ? 1 : stated;
        double powerVa = currentA * demand.nominalVoltageV();
        return new HouseLoad(
                circuit,
                line,
                powerVa * cosPhi,
                powerVa * Math.sqrt(Math.max(0, 1 - cosPhi * cosPhi)),
                demand.nominalVoltageV());
    }

    /** An inverter that misses a line, or whose neutral leads nowhere, sees no voltage it could follow. */
    private boolean canFollow(Inverter inverter, View view, ThingId source) {
        boolean none = installation.findFeed(inverter.id(), Conductor.N).isEmpty()
                && installation.findFeed(inverter.id(), Conductor.PEN).isEmpty();
        return view.isFed(inverter)
                && (none || view.findNeutralPath(source, inverter.id()).isPresent());
    }

    private List<HouseLoad> fed(OperatingState state) {
        View view = installation.in(state);
        List<HouseLoad> loads = new ArrayList<>();
        for (Inverter inverter : installation.inverters()) {
            // What forms the voltage takes what is left over; what has no voltage feeds nothing.
            ThingId source = view.findSource(inverter).orElse(null);
            if (source == null || view.sources().contains(inverter.id()) || !canFollow(inverter, view, source))
                continue;
            PerLine fedA = demand.findFeedInA(inverter).orElse(PerLine.ZERO);
            for (Conductor line : installation.lines(inverter.id()))
                loads.add(new HouseLoad(
                        inverter, line, -fedA.of(line) * demand.nominalVoltageV(), 0, demand.nominalVoltageV()));
        }
        return loads;
    }
}
