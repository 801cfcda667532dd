package tideover.engine.wiring.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Edge.Part;
import tideover.engine.installation.Installation;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.site.ByPass;
import tideover.engine.site.Circuit;
import tideover.engine.site.ControlPort;
import tideover.engine.site.FeedbackContact;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandSettings;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Isolator;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.PortKind;
import tideover.engine.site.RcdGroup;
import tideover.engine.site.RestPosition;
import tideover.engine.site.SignalForm;
import tideover.engine.site.SignalMeaning;
import tideover.engine.site.TerminalId;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.model.Device.Actuator;
import tideover.engine.wiring.model.Device.Drive;
import tideover.engine.wiring.model.Device.Role;
import tideover.engine.wiring.net.Edit;
import tideover.engine.wiring.net.Joints;
import tideover.engine.wiring.net.Nets;
import tideover.engine.wiring.net.PowerNet;
import tideover.engine.wiring.net.SwitchingNet;

/** One house ready to be run: its nets, its switching devices and the inverter that leads them. For one thread. */
public final class HouseModel {

    /** Gate of the breakers of all final circuits. */
    static final int BREAKERS = 0;
    /** Gate of the residual current devices of groups. */
    static final int RCDS = 1;
    /** Gate of the isolators of the inverters. */
    static final int INVERTERS = 2;

    private static final int FIRST_POLE = 3;

    private final Installation installation;
    private final ControlNet wiring;
    private final List<Device> devices = new ArrayList<>();
    private final PowerNet power;
    private final ControlModel control;
    private final Timing timing;
    private final @Nullable Inverter leader;
    private final @Nullable IslandSettings settings;
    private final NetsCache healthy;
    private final ControlCache healthyControl;
    private final Places places;
    private final Senses senses;

    private HouseModel(Installation installation, ControlNet stated) {
        this.installation = installation;
        this.settings =
                installation.all(IslandSettings.class).stream().findFirst().orElse(null);
        this.timing = Timing.of(settings);
        Set<ThingId> withPorts = new HashSet<>();
        for (ControlPort port : stated.controlPorts()) if (port.at() != null) withPorts.add(port.at());
        List<Thing> things = switching(installation, withPorts);
        long poles = installation.edges().stream()
                .filter(edge -> isSwitched(edge.part()))
                .count();
        // What is too large is not modelled at all, rather than wrongly: nothing leads it.
        boolean fits = FIRST_POLE + poles <= Long.SIZE && ControlModel.fits(stated, things.size());
        this.wiring = fits ? stated : ControlNet.none();
        this.leader = fits ? leader(installation, settings) : null;
        if (!fits) things = List.of();
        Map<ThingId, List<ControlPort>> ports = new HashMap<>();
        for (ControlPort port : wiring.controlPorts())
            if (port.at() != null)
                ports.computeIfAbsent(port.at(), at -> new ArrayList<>()).add(port);
        this.control = new ControlModel(wiring, things.stream().map(Thing::id).toList());
        int[] gates = new int[installation.edges().size()];
        Arrays.fill(gates, PowerNet.ALWAYS);
        int next = FIRST_POLE;
        for (Thing thing : things) {
            List<Integer> own = new ArrayList<>();
            for (Edge edge : installation.edges()) {
                if (!edge.thing().id().equals(thing.id()) || !isSwitched(edge.part())) continue;
                // All poles of a by-pass move together; those of a switch may fail one by one.
                if (thing instanceof ByPass && !own.isEmpty()) {
                    gates[edge.index()] = own.get(0);
                } else {
                    gates[edge.index()] = next;
                    own.add(next++);
                }
            }
            devices.add(device(thing, own, ports.getOrDefault(thing.id(), List.of())));
        }
        this.power = PowerNet.of(installation, edge -> gate(edge, gates));
        this.healthy = new NetsCache(power);
        this.healthyControl = new ControlCache(control, control.net());
        this.places = new Places(installation);
        this.senses = new Senses(this);
    }

    /** The model of an installation as planned and built. */
    public static HouseModel of(Installation installation) {
        return new HouseModel(installation, ControlNet.of(installation));
    }

    /** A model in which every switching device is moved from inside the inverter, whatever control wiring is stated. */
    public static HouseModel withIdealControl(Installation installation) {
        return new HouseModel(installation, ControlNet.none());
    }

    private static @Nullable Inverter leader(Installation installation, @Nullable IslandSettings settings) {
        List<Inverter> forming = installation.formingInverters();
        for (Inverter inverter : forming) if (settings != null && inverter.id().equals(settings.at())) return inverter;
        return forming.isEmpty() ? null : forming.get(0);
    }

    /** What switches or, like an isolator with an auxiliary contact, tells the control where it stands. */
    private static List<Thing> switching(Installation installation, Set<ThingId> withPorts) {
        List<Thing> things = new ArrayList<>();
        things.addAll(installation.islandingSwitches());
        things.addAll(installation.neutralEarthSwitches());
        things.addAll(installation.byPasses());
        for (Isolator isolator : installation.all(Isolator.class))
            if (withPorts.contains(isolator.id())) things.add(isolator);
        return things;
    }

    private static boolean isSwitched(Part part) {
        return part == Part.CONTACT || part == Part.LINK_SWITCH || part == Part.BY_PASS;
    }

    private boolean feedsControl(Circuit circuit) {
        return wiring.controlPorts(PortKind.SUPPLY).stream()
                .anyMatch(supply -> circuit.id().equals(supply.at()));
    }

    private int gate(Edge edge, int[] poles) {
        if (poles[edge.index()] != PowerNet.ALWAYS) return poles[edge.index()];
        if (edge.part() != Part.FEED) return PowerNet.ALWAYS;
        // What feeds the control supply stays on while all other breakers are off: without it nothing switches.
        if (edge.thing() instanceof Circuit circuit)
            return edge.conductor().isLine() && !feedsControl(circuit) ? BREAKERS : PowerNet.ALWAYS;
        if (!edge.conductor().isLine() && !edge.conductor().isNeutral()) return PowerNet.ALWAYS;
        if (edge.thing() instanceof RcdGroup) return RCDS;
        return edge.thing() instanceof Inverter ? INVERTERS : PowerNet.ALWAYS;
    }

    private Device device(Thing thing, List<Integer> poles, List<ControlPort> ports) {
        int[] gates = poles.stream().mapToInt(i -> i).toArray();
        if (thing instanceof IslandingSwitch device)
            return device(
                    thing,
                    Role.SWITCH,
                    gates,
                    device.restPosition(),
                    device.feedbackContact(),
                    device.builtInto() != null,
                    ports);
        if (thing instanceof NeutralEarthSwitch device)
            return device(
                    thing,
                    Role.LINK,
                    gates,
                    device.restPosition(),
                    device.feedbackContact(),
                    device.builtInto() != null,
                    ports);
        Role role = thing instanceof ByPass ? Role.BY_PASS : Role.OTHER;
        return new Device(
                thing.id(), role, Drive.HAND, gates, RestPosition.OPEN, FeedbackContact.MIRROR, List.of(), 0, 0);
    }

    private Device device(
            Thing thing,
            Role role,
            int[] gates,
            @Nullable RestPosition rest,
            @Nullable FeedbackContact feedback,
            boolean isInside,
            List<ControlPort> ports) {
        List<Actuator> actuators = new ArrayList<>();
        double operateS = Timing.MOVING_TIME_S;
        double releaseS = Timing.MOVING_TIME_S;
        for (ControlPort port : ports) {
            SignalMeaning meaning = port.onMeans();
            boolean isCoil = port.kind() == PortKind.COIL;
            if (!isCoil && port.kind() != PortKind.INPUT || meaning == null || ControlModel.count(port) == 0) continue;
            if (isCoil && ControlModel.count(port) < 2) continue;
            SignalForm form = isCoil || port.form() == null ? SignalForm.CONTACT : port.form();
            boolean closes = meaning == SignalMeaning.SWITCH_CLOSED || meaning == SignalMeaning.LINK_CLOSED;
            actuators.add(new Actuator(control.node(port, 0), control.second(port), form, isCoil, closes));
            if (port.operateTimeS() != null) operateS = port.operateTimeS();
            if (port.releaseTimeS() != null) releaseS = port.releaseTimeS();
        }
        boolean isWired = !isInside && !actuators.isEmpty();
        return new Device(
                thing.id(),
                role,
                isWired ? Drive.WIRED : Drive.INSIDE,
                gates,
                rest == null ? RestPosition.OPEN : rest,
                feedback == null ? FeedbackContact.NONE : feedback,
                actuators,
                operateS,
                releaseS);
    }

    /** The installation modelled. */
    public Installation installation() {
        return installation;
    }

    /** Its control wiring. */
    public ControlNet wiring() {
        return wiring;
    }

    /** Lines, neutrals and earth. */
    public PowerNet power() {
        return power;
    }

    /** The inverter that leads island operation, if there is one that can. */
    public Optional<Inverter> findLeader() {
        return Optional.ofNullable(leader);
    }

    /** How long the leading inverter feeds a fault until it has shut off [s]. */
    double shutOffTimeS() {
        Double statedS = leader == null ? null : leader.shutOffTimeS();
        return statedS == null ? Timing.SHUT_OFF_TIME_S : statedS;
    }

    /** Its settings, where they are stated. */
    public Optional<IslandSettings> findSettings() {
        return Optional.ofNullable(settings);
    }

    /** Times of the changeover. */
    public Timing timing() {
        return timing;
    }

    /** A machine at rest: everything without energy. */
    public Machine machine(Defect defect) {
        return new Machine(this, defect);
    }

    /** Readings at power terminals. */
    public PowerReadings powerReadings() {
        return new PowerReadings(installation);
    }

    /** Readings of indicators and at control terminals. */
    public ControlReadings controlReadings() {
        return new ControlReadings(this);
    }

    /** Control and bus cores as joints, in the order of {@link ControlNet#wires()}. */
    public Joints controlJoints() {
        return control.net().cores();
    }

    /** Node of a control terminal. */
    public int node(TerminalId terminal) {
        return control.require(terminal);
    }

    /** Node of earth in the control wiring. */
    public int earthNode() {
        return control.earth();
    }

    /** Node of a line conductor beside the control wiring. */
    public int lineNode() {
        return control.mains();
    }

    /** Whether a mistake in control cores leaves every terminal joined to the same others, contacts apart. */
    public boolean sameControlNets(Defect defect) {
        SwitchingNet.Solved planned = control.net().solved();
        control.net().solve(0, 0, planned);
        SwitchingNet edited = control.net().with(defect.control());
        SwitchingNet.Solved other = edited.solved();
        edited.solve(0, 0, other);
        List<Integer> nodes = new ArrayList<>(control.nodes().values());
        for (int a : nodes) for (int b : nodes) if (planned.isJoined(a, b) != other.isJoined(a, b)) return false;
        return true;
    }

    /** Whether what a mistake joins or moves between is one net with every switch open. */
    public boolean samePowerNets(Defect defect) {
        Nets open = healthy.solve(1L << BREAKERS | 1L << RCDS | 1L << INVERTERS, 0, power.nothingTripped());
        for (Edit.Change change : defect.power().changes()) {
            if (change instanceof Edit.Joined joined && !open.isJoined(joined.nodeA(), joined.nodeB())) return false;
            if (change instanceof Edit.Moved moved
                    && !open.isJoined(moved.node(), power.joints().node(moved.joint(), moved.end()))) return false;
            if (change instanceof Edit.Opened) return false;
        }
        return true;
    }

    /** Whether the ends a mistake has exchanged are the two terminals of one port. */
    public boolean isOneElement(Defect defect) {
        List<ThingId> ports = new ArrayList<>();
        for (Edit.Change change : defect.control().changes())
            if (change instanceof Edit.Moved moved)
                control.nodes().forEach((terminal, node) -> {
                    if (node == moved.node()) ports.add(terminal.port());
                });
        return ports.size() == 2 && ports.get(0).equals(ports.get(1));
    }

    Senses senses() {
        return senses;
    }

    Places places() {
        return places;
    }

    ControlModel control() {
        return control;
    }

    List<Device> devices() {
        return devices;
    }

    int device(ThingId id) {
        for (int i = 0; i < devices.size(); i++) if (devices.get(i).id.equals(id)) return i;
        return -1;
    }

    /** Solutions of the healthy control net, likewise. */
    ControlCache healthyControl() {
        return healthyControl;
    }

    /** Solutions of the healthy power net, shared by all runs whose mistake lies elsewhere. */
    NetsCache healthy() {
        return healthy;
    }
}
