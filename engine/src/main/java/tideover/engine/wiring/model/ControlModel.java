package tideover.engine.wiring.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.installation.control.Wire;
import tideover.engine.site.BusPort;
import tideover.engine.site.ControlPort;
import tideover.engine.site.MainContacts;
import tideover.engine.site.PortKind;
import tideover.engine.site.SignalForm;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.net.SwitchingNet;

/** Control and bus wiring as a switching net, and where in it each port is. */
final class ControlModel {

    /** Contacts that are always closed: terminals for the bus cable onwards. */
    private static final int ALWAYS = 63;
    /** Potential of earth, and of a line conductor. */
    static final int EARTH = 30;

    static final int MAINS = 29;

    private final Map<TerminalId, Integer> nodes = new LinkedHashMap<>();
    private final Map<ThingId, Integer> outputs = new HashMap<>();
    private final List<Integer> outputDevices = new ArrayList<>();
    private final List<Supply> supplies = new ArrayList<>();
    private final List<Input> inputs = new ArrayList<>();
    private final List<ControlPort> outputPorts = new ArrayList<>();
    private final List<int[]> loads = new ArrayList<>();
    private final List<BusPort> buses = new ArrayList<>();
    private final SwitchingNet net;
    /** First gate of the outputs; below it lie two for each device. */
    private final int firstOutput;

    private final int earth;
    private final int mains;

    /** A port that gives the extra-low voltage. */
    record Supply(ControlPort port, int plus, int minus) {}

    /** An input of an inverter; its second node is its common or reference, or -1. */
    record Input(ControlPort port, int node, int second) {}

    ControlModel(ControlNet wiring, List<ThingId> devices) {
        SwitchingNet.Builder builder = new SwitchingNet.Builder();
        for (TerminalId terminal : wiring.terminals()) nodes.put(terminal, builder.node());
        firstOutput = 2 * devices.size();
        earth = builder.node();
        mains = builder.node();
        builder.rail(earth, EARTH);
        builder.rail(mains, MAINS);
        for (ControlPort port : wiring.controlPorts(PortKind.SUPPLY)) {
            if (count(port) < 2) continue;
            Supply supply = new Supply(port, node(port, 0), node(port, 1));
            builder.rail(supply.plus(), plusBit(supplies.size()));
            builder.rail(supply.minus(), minusBit(supplies.size()));
            supplies.add(supply);
        }
        for (ControlPort port : wiring.controlPorts()) add(port, devices, builder);
        for (ControlPort port : wiring.controlPorts()) addLoad(port);
        for (BusPort port : wiring.busPorts()) add(port, builder);
        for (Wire wire : wiring.wires()) {
            // A core may be known to end at a port of which nobody knows the terminals.
            int from = nodes.computeIfAbsent(wire.from(), terminal -> builder.node());
            builder.core(from, nodes.computeIfAbsent(wire.to(), terminal -> builder.node()));
        }
        net = builder.build();
    }

    /** Whether gates and potentials, bits of one number each, suffice. No house of one family comes near. */
    static boolean fits(ControlNet wiring, int devices) {
        return 2 * devices + wiring.controlPorts(PortKind.OUTPUT).size() <= ALWAYS
                && minusBit(wiring.controlPorts(PortKind.SUPPLY).size()) < MAINS;
    }

    private void add(ControlPort port, List<ThingId> devices, SwitchingNet.Builder builder) {
        int device = devices.indexOf(port.at());
        if (port.kind() == PortKind.AUXILIARY_CONTACT && count(port) >= 2 && device >= 0) {
            MainContacts when = port.closedWhen();
            if (when != null) builder.contact(node(port, 0), node(port, 1), reportGate(device, when));
        } else if (port.kind() == PortKind.OUTPUT && count(port) >= 1) {
            int gate = firstOutput + outputPorts.size();
            outputs.put(port.id(), gate);
            outputDevices.add(device);
            outputPorts.add(port);
            if (port.form() == SignalForm.CONTACT && count(port) >= 2) {
                builder.contact(node(port, 0), node(port, 1), gate);
            } else {
                findSupply(port.at())
                        .ifPresent(own -> builder.contact(
                                node(port, 0), port.form() == SignalForm.MINUS ? own.minus() : own.plus(), gate));
            }
        } else if (port.kind() == PortKind.INPUT && count(port) >= 1 && device < 0) {
            inputs.add(new Input(port, node(port, 0), second(port)));
        }
    }

    /** Coils, motors and electronic inputs let a little current through between their two ends. */
    private void addLoad(ControlPort port) {
        boolean isCoil = port.kind() == PortKind.COIL && count(port) >= 2;
        boolean isInput = port.kind() == PortKind.INPUT && port.form() != SignalForm.CONTACT && count(port) >= 1;
        if (!isCoil && !isInput) return;
        int second = second(port);
        if (second >= 0) loads.add(new int[] {node(port, 0), second});
    }

    private void add(BusPort port, SwitchingNet.Builder builder) {
        buses.add(port);
        List<String> names = port.terminals();
        List<String> onwards = port.passThrough();
        if (names == null || onwards == null) return;
        for (int i = 0; i < Math.min(names.size(), onwards.size()); i++)
            builder.contact(require(port.terminal(names.get(i))), require(port.terminal(onwards.get(i))), ALWAYS);
    }

    static int plusBit(int supply) {
        return 2 * supply;
    }

    static int minusBit(int supply) {
        return 2 * supply + 1;
    }

    /** The gate of contacts that a device closes while its main contacts are so. */
    static int reportGate(int device, MainContacts when) {
        return 2 * device + when.ordinal();
    }

    static long always() {
        return 1L << ALWAYS;
    }

    SwitchingNet net() {
        return net;
    }

    int earth() {
        return earth;
    }

    int mains() {
        return mains;
    }

    List<Supply> supplies() {
        return supplies;
    }

    List<Input> inputs() {
        return inputs;
    }

    List<ControlPort> outputs() {
        return outputPorts;
    }

    /** The two nodes of each coil and electronic input. */
    List<int[]> loads() {
        return loads;
    }

    List<BusPort> buses() {
        return buses;
    }

    Map<TerminalId, Integer> nodes() {
        return nodes;
    }

    int outputGate(ControlPort port) {
        Integer gate = outputs.get(port.id());
        if (gate == null) throw new IllegalArgumentException(port.id() + " is no output of the model");
        return gate;
    }

    /** The switching device whose position an output reports; -1 for a request of the inverter. */
    int deviceOf(int output) {
        return outputDevices.get(output);
    }

    int outputGate(int output) {
        return firstOutput + output;
    }

    /** The supply of the same device. */
    Optional<Supply> findSupply(@org.jspecify.annotations.Nullable ThingId device) {
        return supplies.stream()
                .filter(supply ->
                        supply.port().at() != null && supply.port().at().equals(device))
                .findFirst();
    }

    /** Second terminal of an input; of an electronic one without it the reference of its device's own supply. */
    int second(ControlPort port) {
        if (count(port) >= 2) return node(port, 1);
        if (port.form() == SignalForm.CONTACT) return -1;
        return findSupply(port.at())
                .map(own -> port.form() == SignalForm.MINUS ? own.plus() : own.minus())
                .orElse(-1);
    }

    static int count(ControlPort port) {
        List<String> names = port.terminals();
        return names == null ? 0 : names.size();
    }

    int node(ControlPort port, int terminal) {
        List<String> names = port.terminals();
        if (names == null) throw new IllegalArgumentException(port.id() + " has no terminals");
        return require(port.terminal(names.get(terminal)));
    }

    int require(TerminalId terminal) {
        Integer node = nodes.get(terminal);
        if (node == null) throw new IllegalArgumentException("no terminal " + terminal);
        return node;
    }

    /** Node of one of the three conductors of a bus port, or -1. */
    int node(BusPort port, int conductor) {
        List<String> names = port.terminals();
        return names == null || names.size() <= conductor ? -1 : require(port.terminal(names.get(conductor)));
    }
}
