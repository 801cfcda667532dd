package tideover.engine.wiring.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.site.BusMedium;
import tideover.engine.site.BusPort;
import tideover.engine.site.BusRole;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.ControlPort;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.Meter;
import tideover.engine.site.PortKind;
import tideover.engine.site.SignalForm;
import tideover.engine.site.SignalMeaning;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.model.ControlModel.Input;
import tideover.engine.wiring.model.Device.Actuator;
import tideover.engine.wiring.model.Device.Drive;
import tideover.engine.wiring.model.Device.Role;
import tideover.engine.wiring.net.Nets;
import tideover.engine.wiring.net.Potential.System;
import tideover.engine.wiring.net.SwitchingNet;

/** What devices perceive: inputs, coils, the bus, and the voltages at their terminals. One for a house, whatever is wrong. */
final class Senses {

    private final HouseModel model;
    private final ControlModel control;
    private final Map<ThingId, Feed> feeds = new HashMap<>();
    private final List<@Nullable Feed> supplyFeeds = new ArrayList<>();
    private final List<Input> inputs = new ArrayList<>();
    private final @Nullable BusPort client;
    private final @Nullable Feed clientFeed;
    private final @Nullable BusPort gridServer;
    private final int[] nearLines;
    private final int nearNeutral;
    private final int[] farLines;
    private final int farNeutral;

    /** Terminals by which a device gets its own energy; without lines it has the inverter's. */
    private static final class Feed {
        private final int[] lines;
        private final int neutral;
        private final boolean isInverter;

        private Feed(int[] lines, int neutral, boolean isInverter) {
            this.lines = lines;
            this.neutral = neutral;
            this.isInverter = isInverter;
        }
    }

    Senses(HouseModel model) {
        this.model = model;
        this.control = model.control();
        Installation installation = model.installation();
        for (ControlModel.Supply supply : control.supplies()) {
            feed(installation, supply.port().at());
            supplyFeeds.add(
                    supply.port().at() == null ? null : feeds.get(supply.port().at()));
        }
        for (BusPort port : control.buses()) feed(installation, port.at());
        Inverter leader = model.findLeader().orElse(null);
        for (Input input : control.inputs())
            if (leader != null && leader.id().equals(input.port().at())) inputs.add(input);
        client = control.buses().stream()
                .filter(port -> port.role() == BusRole.CLIENT)
                .findFirst()
                .orElse(null);
        clientFeed = client == null || client.at() == null ? null : feeds.get(client.at());
        nearLines = leader == null ? new int[0] : lines(installation, leader, Terminals.OUTGOING);
        nearNeutral = leader == null ? -1 : neutral(installation, leader, Terminals.OUTGOING);
        ThingId meterId =
                model.findSettings().map(settings -> settings.gridMeter()).orElse(null);
        Meter meter = meterId == null
                ? null
                : installation.meters().stream()
                        .filter(m -> m.id().equals(meterId))
                        .findFirst()
                        .orElse(null);
        gridServer = meter == null
                ? null
                : control.buses().stream()
                        .filter(port ->
                                port.role() == BusRole.SERVER && meter.id().equals(port.at()))
                        .findFirst()
                        .orElse(null);
        farLines = meter == null ? new int[0] : lines(installation, meter, Terminals.INCOMING);
        farNeutral = meter == null || meter.needsMeasuringNeutral() == null || !meter.needsMeasuringNeutral()
                ? -1
                : measuring(installation, meter);
    }

    private void feed(Installation installation, @Nullable ThingId at) {
        Fed fed = at == null ? null : installation.findFed(at).orElse(null);
        if (fed == null) return;
        Terminals side = fed instanceof Circuit ? Terminals.OUTGOING : Terminals.INCOMING;
        feeds.put(
                fed.id(),
                new Feed(lines(installation, fed, side), neutral(installation, fed, side), fed instanceof Inverter));
    }

    private static int measuring(Installation installation, Meter meter) {
        return tideover.engine.wiring.net.PowerNet.measuringTerminal(
                installation, installation.meters().indexOf(meter));
    }

    private static int[] lines(Installation installation, Fed thing, Terminals side) {
        return installation.lines(thing.id()).stream()
                .mapToInt(line -> installation.node(thing.id(), side, line))
                .toArray();
    }

    private static int neutral(Installation installation, Fed thing, Terminals side) {
        for (Conductor neutral : new Conductor[] {Conductor.N, Conductor.PEN}) {
            int node = installation.node(thing.id(), side, neutral);
            if (installation.edgesAt(node).length > 0) return node;
        }
        return -1;
    }

    /** What a port means as it is set in this run. */
    @Nullable
    SignalMeaning meaning(Machine machine, ControlPort port) {
        for (ControlPort other : machine.defect().ports()) if (other.id().equals(port.id())) return other.onMeans();
        return port.onMeans();
    }

    private static BusPort set(Machine machine, BusPort port) {
        for (BusPort other : machine.defect().buses()) if (other.id().equals(port.id())) return other;
        return port;
    }

    /** Potentials of the control supplies that are there. */
    int supplies(Machine machine) {
        int live = 1 << ControlModel.EARTH | 1 << ControlModel.MAINS;
        for (int i = 0; i < control.supplies().size(); i++)
            if (isFed(machine, supplyFeeds.get(i)))
                live |= 1 << ControlModel.plusBit(i) | 1 << ControlModel.minusBit(i);
        return live;
    }

    private boolean isFed(Machine machine, @Nullable Feed feed) {
        if (feed == null) return machine.surroundings().energy();
        if (feed.isInverter) return machine.isInverterAwake();
        return feed.lines.length > 0 && isLive(machine.nets(), feed.lines[0], feed.neutral);
    }

    private static boolean isLive(Nets nets, int line, int neutral) {
        for (System system : System.values())
            if ((nets.potentials(line) & system.lines()) != 0
                    && (neutral < 0 || (nets.potentials(neutral) & system.neutral()) != 0)) return true;
        return false;
    }

    /** Where a wired device is driven to. */
    boolean target(Machine machine, Device device, boolean now) {
        boolean close = false;
        boolean open = false;
        boolean isPaired = false;
        for (Actuator actuator : device.actuators) {
            isPaired |= actuator.closes() != device.actuators.get(0).closes();
            if (!isEnergised(machine.controlNets(), actuator)) continue;
            close |= actuator.closes();
            open |= !actuator.closes();
        }
        if (close != open) return close;
        if (close || isPaired) return now;
        return switch (device.rest) {
            case OPEN -> false;
            case CLOSED -> true;
            case AS_IT_WAS -> now;
        };
    }

    private boolean isEnergised(SwitchingNet.Solved nets, Actuator actuator) {
        return actuator.isCoil()
                ? isAcross(nets, actuator.nodeA(), actuator.nodeB())
                : isOn(nets, actuator.form(), actuator.nodeA(), actuator.nodeB());
    }

    private boolean isAcross(SwitchingNet.Solved nets, int nodeA, int nodeB) {
        int a = nets.potentials(nodeA);
        int b = nets.potentials(nodeB);
        for (int i = 0; i < control.supplies().size(); i++) {
            int plus = 1 << ControlModel.plusBit(i);
            int minus = 1 << ControlModel.minusBit(i);
            if ((a & plus) != 0 && (b & minus) != 0 || (b & plus) != 0 && (a & minus) != 0) return true;
        }
        return false;
    }

    private boolean isOn(SwitchingNet.Solved nets, @Nullable SignalForm form, int node, int second) {
        if (form == SignalForm.CONTACT) return second >= 0 && nets.isJoined(node, second);
        int here = nets.potentials(node);
        int there = second < 0 ? -1 : nets.potentials(second);
        for (int i = 0; i < control.supplies().size(); i++) {
            int plus = 1 << ControlModel.plusBit(i);
            int minus = 1 << ControlModel.minusBit(i);
            boolean isMinus = form == SignalForm.MINUS;
            if ((here & (isMinus ? minus : plus)) != 0 && (there & (isMinus ? plus : minus)) != 0) return true;
        }
        return false;
    }

    private boolean isOn(Machine machine, Input input) {
        return isOn(machine.controlNets(), input.port().form(), input.node(), input.second());
    }

    boolean isOn(Machine machine, ControlPort port) {
        if (port.kind() == PortKind.OUTPUT) return machine.isOutputOn(port);
        if (port.kind() == PortKind.COIL)
            return isAcross(machine.controlNets(), control.node(port, 0), control.node(port, 1));
        if (port.kind() == PortKind.SUPPLY)
            return isAcross(machine.controlNets(), control.node(port, 0), control.node(port, 1));
        if (port.kind() == PortKind.INPUT)
            return isOn(machine.controlNets(), port.form(), control.node(port, 0), control.second(port));
        return machine.controlNets().isJoined(control.node(port, 0), control.node(port, 1));
    }

    /** Whether all inputs that report a position report it; without any, what lies inside knows and the rest is believed. */
    private boolean reports(Machine machine, SignalMeaning yes, SignalMeaning no, Role role, boolean wanted) {
        boolean isAny = false;
        for (Input input : inputs) {
            SignalMeaning meaning = meaning(machine, input.port());
            if (meaning != yes && meaning != no) continue;
            isAny = true;
            if (isOn(machine, input) != (meaning == yes)) return false;
        }
        if (isAny) return true;
        List<Device> devices = model.devices();
        for (int d = 0; d < devices.size(); d++) {
            Device device = devices.get(d);
            if (device.role != role || device.drive != Drive.INSIDE) continue;
            boolean isClosed = device.isMirrored ? !machine.areAllOpen(d) : machine.isMechanismClosed(d);
            if (wanted && !machine.isMechanismClosed(d) || !wanted && isClosed) return false;
        }
        return true;
    }

    boolean isSeparated(Machine machine) {
        return reports(machine, SignalMeaning.SWITCH_OPEN, SignalMeaning.SWITCH_CLOSED, Role.SWITCH, false);
    }

    boolean isClosed(Machine machine) {
        return reports(machine, SignalMeaning.SWITCH_CLOSED, SignalMeaning.SWITCH_OPEN, Role.SWITCH, true);
    }

    boolean isLinked(Machine machine) {
        return reports(machine, SignalMeaning.LINK_CLOSED, SignalMeaning.LINK_OPEN, Role.LINK, true);
    }

    boolean isUnlinked(Machine machine) {
        return reports(machine, SignalMeaning.LINK_OPEN, SignalMeaning.LINK_CLOSED, Role.LINK, false);
    }

    boolean mayRun(Machine machine) {
        for (Input input : inputs)
            if (meaning(machine, input.port()) == SignalMeaning.MAY_RUN && !isOn(machine, input)) return false;
        return true;
    }

    /** Whether the inverter sees the grid at its own terminals. */
    boolean seesGridNear(Machine machine) {
        return isGrid(machine.nets(), nearLines, nearNeutral);
    }

    /** Whether it sees the grid beyond the open switch: by an input, by the meter, or, told nothing, as it is. */
    boolean seesGridFar(Machine machine) {
        boolean isAny = false;
        for (Input input : inputs) {
            if (meaning(machine, input.port()) != SignalMeaning.GRID_PRESENT) continue;
            isAny = true;
            if (isOn(machine, input)) return true;
        }
        if (gridServer != null) return isAnswered(machine, gridServer) && isGrid(machine.nets(), farLines, farNeutral);
        if (farLines.length > 0) return isGrid(machine.nets(), farLines, farNeutral);
        return !isAny && machine.surroundings().gridLines();
    }

    private static boolean isGrid(Nets nets, int[] lines, int neutral) {
        if (lines.length == 0) return false;
        if (neutral >= 0 && (nets.potentials(neutral) & System.GRID.neutral()) == 0) return false;
        return sequence(nets, lines, System.GRID) > 0;
    }

    /** 1 where lines follow one another as they should, or there is only one; -1 the other way round; 0 not all there. */
    static int sequence(Nets nets, int[] lines, System system) {
        int[] at = new int[lines.length];
        for (int i = 0; i < lines.length; i++) {
            int bits = system.of(nets.potentials(lines[i])) & 7;
            if (bits == 0 || (bits & bits - 1) != 0) return 0;
            at[i] = Integer.numberOfTrailingZeros(bits);
        }
        if (at.length < 3) return 1;
        int first = Math.floorMod(at[1] - at[0], 3);
        int second = Math.floorMod(at[2] - at[1], 3);
        if (first != second || first == 0) return 0;
        return first == 1 ? 1 : -1;
    }

    /** Whether the client gets answers from a server. */
    boolean isAnswered(Machine machine, BusPort server) {
        if (client == null || !isFed(machine, clientFeed) || !isServerFed(machine, server)) return false;
        BusPort asking = set(machine, client);
        BusPort answering = set(machine, server);
        if (asking.medium() == BusMedium.TCP || answering.medium() == BusMedium.TCP)
            return asking.medium() == answering.medium();
        if (!alike(asking.rateBitPerS(), answering.rateBitPerS())
                || !alike(asking.parity(), answering.parity())
                || !alike(asking.stopBits(), answering.stopBits())) return false;
        if (!alike(server.address(), answering.address())) return false;
        for (BusPort other : control.buses()) {
            if (other.id().equals(server.id()) || other.role() != BusRole.SERVER) continue;
            Integer address = set(machine, other).address();
            if (address != null && address.equals(answering.address()) && isJoined(machine, other, server))
                return false;
        }
        return isJoined(machine, client, server) && isClear(machine, client) && isClear(machine, server);
    }

    private static boolean alike(@Nullable Object a, @Nullable Object b) {
        return a == null || b == null || a.equals(b);
    }

    private boolean isServerFed(Machine machine, BusPort server) {
        Feed feed = server.at() == null ? null : feeds.get(server.at());
        if (feed == null || feed.isInverter) return machine.surroundings().energy();
        for (int line : feed.lines) if (isLive(machine.nets(), line, -1)) return true;
        return false;
    }

    private boolean isJoined(Machine machine, BusPort a, BusPort b) {
        for (int conductor = 0; conductor < 2; conductor++) {
            int nodeA = control.node(a, conductor);
            int nodeB = control.node(b, conductor);
            if (nodeA < 0 || nodeB < 0 || !machine.controlNets().isJoined(nodeA, nodeB)) return false;
        }
        return true;
    }

    /** Whether the two conductors are apart and nothing foreign lies on them. */
    private boolean isClear(Machine machine, BusPort port) {
        int d1 = control.node(port, 0);
        int d0 = control.node(port, 1);
        if (d1 < 0 || d0 < 0 || machine.controlNets().isJoined(d1, d0)) return false;
        int common = control.node(port, 2);
        if (common >= 0) {
            if (machine.controlNets().isJoined(d1, common)
                    || machine.controlNets().isJoined(d0, common)) return false;
            if ((machine.controlNets().potentials(common) >>> ControlModel.MAINS & 1) != 0) return false;
        }
        return machine.controlNets().potentials(d1) == 0
                && machine.controlNets().potentials(d0) == 0;
    }
}
