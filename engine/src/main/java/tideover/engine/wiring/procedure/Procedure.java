package tideover.engine.wiring.procedure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.installation.control.Wire;
import tideover.engine.site.Board;
import tideover.engine.site.BusPort;
import tideover.engine.site.BusRole;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.ControlPort;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Meter;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PortKind;
import tideover.engine.site.RcdGroup;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.model.ControlReadings;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.model.PowerReadings;
import tideover.engine.wiring.model.Reading;

/** The steps for one house and all readings they ask for. */
public final class Procedure {

    private final HouseModel model;
    private final Installation installation;
    private final PowerReadings power;
    private final ControlReadings control;
    private List<PlannedReading> readings = new ArrayList<>();
    private final Map<String, Integer> known = new HashMap<>();
    private List<Step> steps = new ArrayList<>();
    private final List<Wire> lifted = new ArrayList<>();

    private Procedure(HouseModel model) {
        this.model = model;
        this.installation = model.installation();
        this.power = model.powerReadings();
        this.control = model.controlReadings();
    }

    /** The steps for a house; none where nothing can form an island. */
    public static Procedure of(HouseModel model) {
        Procedure procedure = new Procedure(model);
        if (model.findLeader().isPresent()) procedure.plan();
        procedure.steps = List.copyOf(procedure.steps);
        procedure.readings = List.copyOf(procedure.readings);
        return procedure;
    }

    /** All steps: inspection, dead, switching, live; those that may be added last. */
    public List<Step> steps() {
        return steps;
    }

    /** All readings that any step asks for. */
    public List<PlannedReading> readings() {
        return readings;
    }

    /** Cores that are lifted one by one in steps that may be added. */
    public List<Wire> lifted() {
        return List.copyOf(lifted);
    }

    /** The model it runs on. */
    public HouseModel model() {
        return model;
    }

    private void plan() {
        inspection();
        dead();
        switching();
        live();
        further();
    }

    private void inspection() {
        for (ControlPort port : model.wiring().controlPorts())
            if (port.kind() == PortKind.INPUT || port.kind() == PortKind.OUTPUT)
                step(StepName.SETTINGS, port.id(), Situation.DEAD, control.setting(port.id()));
        for (BusPort port : model.wiring().busPorts())
            step(StepName.SETTINGS, port.id(), Situation.DEAD, control.setting(port.id()));
        for (Fed fed : boards())
            if (has(fed, Conductor.N) && has(fed, Conductor.PE))
                step(StepName.LINKS_SEEN, fed.id(), Situation.DEAD, power.linkSeen(fed.id()));
    }

    private List<Fed> boards() {
        List<Fed> all = new ArrayList<>(installation.boards());
        all.addAll(installation.all(RcdGroup.class));
        return all;
    }

    private boolean has(Fed fed, Conductor conductor) {
        return power.conductors(fed.id(), Terminals.OUTGOING).contains(conductor);
    }

    private int node(ThingId thing, Terminals side, Conductor conductor) {
        return installation.node(thing, side, conductor);
    }

    private void dead() {
        for (Fed fed : installation.all(Fed.class)) {
            if (!has(fed, Conductor.PE)) continue;
            int end = node(fed.id(), Terminals.OUTGOING, Conductor.PE);
            step(
                    StepName.PROTECTIVE_CONTINUITY,
                    fed.id(),
                    Situation.DEAD,
                    power.continuity("PE", fed.id(), installation.mainEarth(), end));
        }
        for (Circuit circuit : installation.circuits()) insulation(circuit);
        // Behind the isolator of an inverter that is open nothing can be followed.
        for (Fed fed : installation.all(Fed.class)) if (!(fed instanceof Inverter)) polarity(fed);
        for (Board board : installation.boards()) insulation(board);
        for (IslandingSwitch device : installation.islandingSwitches()) {
            poles(device);
            neutralsApart(device);
        }
        for (NeutralEarthSwitch device : installation.neutralEarthSwitches()) {
            ThingId at = device.neutralAt();
            if (at == null || installation.findFed(at).isEmpty()) continue;
            Reading tie = power.continuity(
                    "N-PE", device.id(), node(at, Terminals.OUTGOING, Conductor.N), installation.mainEarth());
            step(StepName.LINK, device.id(), List.of(Situation.DEAD, Situation.DEAD_LINK_CLOSED), tie);
        }
        control.findClient()
                .ifPresent(client -> step(StepName.BUS_LINE, client.id(), Situation.DEAD, control.resistance(client)));
    }

    private void insulation(Fed thing) {
        List<Conductor> all = power.conductors(thing.id(), Terminals.OUTGOING);
        List<Reading> pairs = new ArrayList<>();
        for (int i = 0; i < all.size(); i++)
            for (int j = i + 1; j < all.size(); j++)
                pairs.add(power.continuity(
                        all.get(i) + "-" + all.get(j),
                        thing.id(),
                        node(thing.id(), Terminals.OUTGOING, all.get(i)),
                        node(thing.id(), Terminals.OUTGOING, all.get(j))));
        step(StepName.INSULATION, thing.id(), List.of(Situation.DEAD_RCDS_OFF), pairs.toArray(Reading[]::new));
    }

    /** From the terminals of what feeds a thing to those where its cable ends, breaker on. */
    private void polarity(Fed thing) {
        ThingId from = thing.fedFrom();
        if (from == null || installation.findFed(from).isEmpty()) return;
        List<Reading> ends = new ArrayList<>();
        for (Conductor conductor : power.conductors(thing.id(), Terminals.INCOMING)) {
            ThingId start = conductor.isNeutral() && thing.neutralFrom() != null ? thing.neutralFrom() : from;
            if (installation.findFed(start).isEmpty()) continue;
            ends.add(power.continuity(
                    conductor + " from " + start,
                    thing.id(),
                    node(start, Terminals.OUTGOING, conductor),
                    node(thing.id(), Terminals.INCOMING, conductor)));
        }
        step(StepName.POLARITY, thing.id(), List.of(Situation.DEAD_BREAKERS_ON), ends.toArray(Reading[]::new));
    }

    private void poles(IslandingSwitch device) {
        List<Reading> poles = new ArrayList<>();
        for (Conductor conductor : power.conductors(device.id(), Terminals.OUTGOING))
            poles.add(power.continuity(
                    conductor + " through",
                    device.id(),
                    node(device.id(), Terminals.INCOMING, conductor),
                    node(device.id(), Terminals.OUTGOING, conductor)));
        step(
                StepName.POLES,
                device.id(),
                List.of(Situation.DEAD, Situation.DEAD_SWITCH_CLOSED),
                poles.toArray(Reading[]::new));
    }

    private void neutralsApart(IslandingSwitch device) {
        if (!power.conductors(device.id(), Terminals.OUTGOING).contains(Conductor.N)) return;
        int gridSide = node(device.id(), Terminals.INCOMING, Conductor.N);
        List<Reading> pairs = new ArrayList<>();
        pairs.add(power.continuity("N-N", device.id(), gridSide, node(device.id(), Terminals.OUTGOING, Conductor.N)));
        for (Circuit circuit : installation.circuits())
            if (has(circuit, Conductor.N))
                pairs.add(power.continuity(
                        "N to grid side", circuit.id(), gridSide, node(circuit.id(), Terminals.OUTGOING, Conductor.N)));
        step(StepName.NEUTRALS_APART, device.id(), List.of(Situation.DEAD), pairs.toArray(Reading[]::new));
    }

    private List<Reading> indicators() {
        List<Reading> all = new ArrayList<>();
        model.findLeader().ifPresent(leader -> all.add(control.mode(leader.id())));
        for (IslandingSwitch device : installation.islandingSwitches()) all.add(control.position(device.id()));
        for (NeutralEarthSwitch device : installation.neutralEarthSwitches()) all.add(control.position(device.id()));
        ThingId leader = model.findLeader().map(inverter -> inverter.id()).orElse(ThingId.SUPPLY);
        for (ControlPort port : model.wiring().controlPorts())
            if (leader.equals(port.at()) && port.kind() == PortKind.INPUT) all.add(control.signal(port));
        for (BusPort port : model.wiring().busPorts()) if (port.role() == BusRole.SERVER) all.add(control.bus(port));
        for (int i = 0; i < installation.meters().size(); i++) {
            Meter meter = installation.meters().get(i);
            if (meter.measuringNeutralFrom() == null) continue;
            for (Conductor line : installation.lines(meter.id())) all.add(power.metered(meter.id(), i, line));
        }
        return all;
    }

    private void switching() {
        for (IslandingSwitch device : installation.islandingSwitches()) {
            List<Reading> connected = new ArrayList<>(indicators());
            connected.addAll(sides(device, Terminals.INCOMING));
            connected.addAll(sides(device, Terminals.OUTGOING));
            step(StepName.CONNECTED, device.id(), Situation.CONNECTED_UNLOADED, connected.toArray(Reading[]::new));
            Reading[] shown = indicators().toArray(Reading[]::new);
            Reading[] gridSide = sides(device, Terminals.INCOMING).toArray(Reading[]::new);
            Reading[] islandSide = sides(device, Terminals.OUTGOING).toArray(Reading[]::new);
            step(StepName.LOSS, device.id(), Situation.ISLAND_UNLOADED, shown);
            step(StepName.GRID_SIDE_DEAD, device.id(), Situation.ISLAND_UNLOADED, gridSide);
            step(StepName.ISLAND_VOLTAGES, device.id(), Situation.ISLAND_UNLOADED, islandSide);
            List<Reading> waiting = new ArrayList<>(indicators());
            waiting.addAll(sides(device, Terminals.INCOMING));
            waiting.addAll(sides(device, Terminals.OUTGOING));
            step(StepName.WAITING, device.id(), Situation.WAITING_UNLOADED, waiting.toArray(Reading[]::new));
            step(StepName.RETURN, device.id(), Situation.RETURNED_UNLOADED, connected.toArray(Reading[]::new));
            step(StepName.DARK, device.id(), Situation.DARK, connected.toArray(Reading[]::new));
        }
        installation.byPasses().forEach(byPass -> {
            List<Reading> all = new ArrayList<>(indicators());
            for (IslandingSwitch device : installation.islandingSwitches())
                all.addAll(sides(device, Terminals.OUTGOING));
            step(
                    StepName.BY_PASS,
                    byPass.id(),
                    List.of(Situation.BY_PASSED, Situation.BY_PASSED_INVERTER_ON),
                    all.toArray(Reading[]::new));
        });
    }

    private List<Reading> sides(IslandingSwitch device, Terminals side) {
        List<Reading> all = new ArrayList<>(power.voltages(device.id(), side));
        if (side == Terminals.OUTGOING && installation.lines(device.id()).size() == 3)
            all.add(power.rotation(device.id(), side));
        return all;
    }

    private void live() {
        for (Circuit circuit : installation.circuits()) {
            List<Reading> all = new ArrayList<>(power.voltages(circuit.id(), Terminals.OUTGOING));
            if (installation.lines(circuit.id()).size() == 3) all.add(power.rotation(circuit.id(), Terminals.OUTGOING));
            all.add(power.load(circuit));
            all.add(power.rcdTest(circuit));
            step(StepName.CIRCUIT_CONNECTED, circuit.id(), Situation.CONNECTED, all.toArray(Reading[]::new));
            Reading current = power.earthCurrent(circuit);
            if (installation
                    .in(OperatingState.ISLAND_GRID_DEAD)
                    .findSource(circuit)
                    .isPresent()) {
                all.add(current);
                step(StepName.CIRCUIT_ISLAND, circuit.id(), Situation.ISLAND, all.toArray(Reading[]::new));
            }
            step(StepName.CIRCUIT_WAITING, circuit.id(), Situation.WAITING, power.load(circuit), current);
        }
    }

    private void further() {
        for (Wire wire : model.wiring().wires()) {
            step(StepName.CORE, wire.cable().id(), wire, List.of(Situation.DEAD), null, control.core(wire));
        }
        List<Reading> terminals = new ArrayList<>();
        for (ControlPort port : model.wiring().controlPorts()) {
            if (port.terminals() == null) continue;
            for (String name : port.terminals()) terminals.add(control.voltage(port.terminal(name)));
        }
        if (!terminals.isEmpty() && model.findLeader().isPresent())
            step(
                    StepName.TERMINALS,
                    model.findLeader().get().id(),
                    List.of(Situation.CONNECTED_UNLOADED, Situation.ISLAND_UNLOADED),
                    terminals.toArray(Reading[]::new));
        Reading[] shown = indicators().toArray(Reading[]::new);
        for (Wire wire : model.wiring().wires()) {
            if (model.wiring().findPort(wire.from().port()).orElse(null) instanceof BusPort) continue;
            lifted.add(wire);
            step(StepName.LIFTED_CORE, wire.cable().id(), wire, List.of(Situation.ISLAND_UNLOADED), wire, shown);
        }
    }

    private void step(StepName name, ThingId place, Situation situation, Reading... taken) {
        step(name, place, List.of(situation), taken);
    }

    private void step(StepName name, ThingId place, List<Situation> situations, Reading... taken) {
        step(name, place, null, situations, null, taken);
    }

    private void step(
            StepName name,
            ThingId place,
            @Nullable Wire about,
            List<Situation> situations,
            @Nullable Wire without,
            Reading... taken) {
        if (taken.length == 0) return;
        List<Integer> indexes = new ArrayList<>();
        for (Situation situation : situations)
            for (Reading reading : taken) indexes.add(reading(situation, without, reading));
        String detail = about == null ? "" : Integer.toString(about.position() + 1);
        steps.add(new Step(steps.size(), name, place, detail, indexes));
    }

    private int reading(Situation situation, @Nullable Wire without, Reading reading) {
        PlannedReading planned = new PlannedReading(readings.size(), situation, without, reading);
        Integer index = known.putIfAbsent(planned.id(), readings.size());
        if (index != null) return index;
        readings.add(planned);
        return planned.index();
    }
}
