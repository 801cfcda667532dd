package tideover.engine.installation.control;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.site.BusMedium;
import tideover.engine.site.BusPort;
import tideover.engine.site.ByPass;
import tideover.engine.site.ControlPort;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.InverterRole;
import tideover.engine.site.IslandSettings;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Isolator;
import tideover.engine.site.MainContacts;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.PortKind;
import tideover.engine.site.SignalForm;
import tideover.engine.site.SignalMeaning;
import tideover.engine.site.TerminalId;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** What the control wiring does: which contact makes which coil or input come on. */
public final class ControlWiring {

    private final Installation installation;
    private final ControlNet net;
    private final ControlGraph graph;
    private final @Nullable Inverter leader;
    private final List<Thing> devices = new ArrayList<>();
    private final Map<ThingId, Drive> drives = new LinkedHashMap<>();
    private final ControlLoads loads;

    private ControlWiring(Installation installation, ControlNet net) {
        this.installation = installation;
        this.net = net;
        this.graph = new ControlGraph(net);
        this.leader = leader(installation);
        for (IslandingSwitch device : installation.islandingSwitches())
            if (device.builtInto() == null) devices.add(device);
        for (NeutralEarthSwitch device : installation.neutralEarthSwitches())
            if (device.builtInto() == null) devices.add(device);
        List<ControlPort> supplies = net.controlPorts(PortKind.SUPPLY).stream()
                .sorted(Comparator.comparing(ControlPort::id))
                .toList();
        for (ControlPort port : net.controlPorts())
            if (port.kind() == PortKind.COIL || port.kind() == PortKind.INPUT) drive(port, supplies);
        this.loads = new ControlLoads(drives.values(), net.wires().size());
    }

    /** Studies a control wiring. */
    public static ControlWiring of(Installation installation, ControlNet net) {
        return new ControlWiring(installation, net);
    }

    /** The installation it belongs to. */
    public Installation installation() {
        return installation;
    }

    /** Its ports and cores. */
    public ControlNet net() {
        return net;
    }

    /** The inverter that leads island operation: the one with settings for it, else the first that forms voltage. */
    public Optional<Inverter> findLeader() {
        return Optional.ofNullable(leader);
    }

    /** The settings of the inverter that leads. */
    public Optional<IslandSettings> findSettings() {
        return installation.all(IslandSettings.class).stream()
                .filter(settings -> leader != null && leader.id().equals(settings.at()))
                .findFirst();
    }

    /** Islanding switches, then neutral–earth switches, that are devices of their own. */
    public List<Thing> devices() {
        return List.copyOf(devices);
    }

    /** Whether somebody has stated ports, or none are needed because every switching device is part of the inverter. */
    boolean isStated() {
        return !net.controlPorts().isEmpty() || devices.isEmpty();
    }

    /** Whether two devices can talk over one line, or both over the network. */
    boolean isOnOneBus(ThingId one, ThingId other) {
        List<BusPort> busPorts = net.busPorts();
        for (BusPort a : busPorts)
            for (BusPort b : busPorts) {
                if (!one.equals(a.at()) || !other.equals(b.at()) || a.medium() != b.medium()) continue;
                if (a.medium() == BusMedium.TCP || isJoined(a, b)) return true;
            }
        return false;
    }

    private boolean isJoined(BusPort one, BusPort other) {
        List<String> names = one.terminals();
        return names != null
                && !names.isEmpty()
                && net.joined(one.terminal(names.get(0))).stream()
                        .anyMatch(terminal -> terminal.port().equals(other.id()));
    }

    /** What the wiring carries when everything draws at once. */
    ControlLoads loads() {
        return loads;
    }

    /** How a coil or input comes on, if it ever does. */
    public Optional<Drive> findDrive(ControlPort port) {
        return Optional.ofNullable(drives.get(port.id()));
    }

    /** Ports of one kind at a device. */
    List<ControlPort> portsAt(ThingId device, PortKind kind) {
        List<ControlPort> ports = new ArrayList<>(4);
        for (ControlPort port : net.controlPorts())
            if (port.kind() == kind && device.equals(port.at())) ports.add(port);
        return ports;
    }

    /** The inputs of the inverter that leads which are set to take one of these meanings. */
    List<ControlPort> inputs(Set<SignalMeaning> meanings) {
        if (leader == null) return List.of();
        return portsAt(leader.id(), PortKind.INPUT).stream()
                .filter(port -> port.onMeans() != null && meanings.contains(port.onMeans()))
                .toList();
    }

    /** Coils and inputs that move a device. */
    List<ControlPort> commandsOf(ThingId device) {
        List<ControlPort> commands = new ArrayList<>(portsAt(device, PortKind.COIL));
        commands.addAll(portsAt(device, PortKind.INPUT));
        return commands;
    }

    /** What a closed contact says; nothing where that is not stated. */
    Optional<SignalMeaning> findReport(ControlPort contact) {
        if (contact.kind() == PortKind.OUTPUT) return Optional.ofNullable(contact.onMeans());
        Thing device =
                contact.at() == null ? null : installation.find(contact.at()).orElse(null);
        if (contact.closedWhen() == null || device == null) return Optional.empty();
        boolean open = contact.closedWhen() == MainContacts.OPEN;
        if (device instanceof IslandingSwitch)
            return Optional.of(open ? SignalMeaning.SWITCH_OPEN : SignalMeaning.SWITCH_CLOSED);
        if (device instanceof NeutralEarthSwitch)
            return Optional.of(open ? SignalMeaning.LINK_OPEN : SignalMeaning.LINK_CLOSED);
        if (device instanceof ByPass || device instanceof Isolator)
            return open ? Optional.of(SignalMeaning.MAY_RUN) : Optional.empty();
        return Optional.empty();
    }

    /** Facts without which it is not known where ports are joined, or what they do. */
    List<FactId> gaps() {
        List<FactId> gaps = new ArrayList<>(0);
        for (ControlPort port : net.controlPorts()) gaps.addAll(gaps(port));
        gaps.addAll(net.missingCores());
        for (IslandSettings settings : installation.all(IslandSettings.class))
            if (settings.at() == null) gaps.add(settings.fact("at"));
        return gaps;
    }

    /** Facts without which it is not known what one port does. */
    static List<FactId> gaps(ControlPort port) {
        List<FactId> gaps = new ArrayList<>(0);
        if (port.at() == null) gaps.add(port.fact("at"));
        if (port.kind() == null) gaps.add(port.fact("kind"));
        if (port.terminals() == null) gaps.add(port.fact("terminals"));
        boolean isSignal = port.kind() == PortKind.INPUT || port.kind() == PortKind.OUTPUT;
        if (isSignal && port.form() == null) gaps.add(port.fact("form"));
        if ((isSignal || port.kind() == PortKind.COIL) && port.onMeans() == null) gaps.add(port.fact("onMeans"));
        if (port.kind() == PortKind.AUXILIARY_CONTACT && port.closedWhen() == null) gaps.add(port.fact("closedWhen"));
        return gaps;
    }

    private static @Nullable Inverter leader(Installation installation) {
        // By id, so that the order in which things are written changes nothing.
        List<Inverter> inverters = installation.inverters().stream()
                .sorted(Comparator.comparing(Inverter::id))
                .toList();
        for (Inverter inverter : inverters)
            if (installation.all(IslandSettings.class).stream()
                    .anyMatch(set -> inverter.id().equals(set.at()))) return inverter;
        return inverters.stream()
                .filter(inverter -> inverter.role() == InverterRole.GRID_FORMING)
                .findFirst()
                .orElse(null);
    }

    private void drive(ControlPort port, List<ControlPort> supplies) {
        List<String> names = port.terminals();
        if (names == null || names.isEmpty() || port.kind() == PortKind.INPUT && port.form() == null) return;
        if (port.kind() == PortKind.INPUT && port.form() == SignalForm.CONTACT) {
            drive(port, port, names, names);
            return;
        }
        for (ControlPort supply : supplies) {
            List<String> rails = supply.terminals();
            if (rails != null && rails.size() >= 2 && drive(port, supply, rails, names)) return;
        }
    }

    private boolean drive(ControlPort port, ControlPort supply, List<String> rails, List<String> names) {
        ControlGraph.Way way = way(port, supply, rails, names, Set.of()).orElse(null);
        if (way == null) return false;
        List<ControlPort> needed = way.contacts().stream()
                .filter(contact ->
                        way(port, supply, rails, names, Set.of(contact.id())).isEmpty())
                .toList();
        drives.put(port.id(), new Drive(port, supply, way.wires(), way.contacts(), needed));
        return true;
    }

    /** The current's way from plus through the port to minus. */
    private Optional<ControlGraph.Way> way(
            ControlPort port, ControlPort supply, List<String> rails, List<String> names, Set<ThingId> open) {
        TerminalId first = port.terminal(names.get(0));
        if (port.equals(supply))
            return names.size() < 2 ? Optional.empty() : graph.findWay(first, port.terminal(names.get(1)), open);
        TerminalId plus = supply.terminal(rails.get(0));
        TerminalId minus = supply.terminal(rails.get(1));
        if (port.kind() == PortKind.INPUT)
            return graph.findWay(port.form() == SignalForm.MINUS ? minus : plus, first, open);
        if (names.size() < 2) return Optional.empty();
        TerminalId second = port.terminal(names.get(1));
        Optional<ControlGraph.Way> way = both(plus, first, minus, second, open);
        return way.isPresent() ? way : both(plus, second, minus, first, open);
    }

    private Optional<ControlGraph.Way> both(
            TerminalId plus, TerminalId there, TerminalId minus, TerminalId back, Set<ThingId> open) {
        Optional<ControlGraph.Way> out = graph.findWay(plus, there, open);
        if (out.isEmpty()) return Optional.empty();
        return graph.findWay(minus, back, open).map(home -> {
            List<Wire> wires = new ArrayList<>(out.get().wires());
            wires.addAll(home.wires());
            List<ControlPort> contacts = new ArrayList<>(out.get().contacts());
            contacts.addAll(home.contacts());
            return new ControlGraph.Way(wires, contacts);
        });
    }
}
