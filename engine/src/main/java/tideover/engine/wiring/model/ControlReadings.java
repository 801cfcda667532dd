package tideover.engine.wiring.model;

import java.util.List;
import tideover.engine.installation.control.Wire;
import tideover.engine.site.BusPort;
import tideover.engine.site.BusRole;
import tideover.engine.site.ControlPort;
import tideover.engine.site.PortKind;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.net.SwitchingNet;

/** What indicators show, and what an instrument shows at control terminals. */
public final class ControlReadings {

    private final HouseModel model;
    private final ControlModel control;

    ControlReadings(HouseModel model) {
        this.model = model;
        this.control = model.control();
    }

    /** What the leading inverter says it is about. */
    public Reading mode(ThingId inverter) {
        return new Reading(ReadingKind.MODE, inverter, "", ControlReadings::mode);
    }

    private static Shown mode(Machine machine) {
        if (machine.isUnsettled()) return Shown.UNSETTLED;
        return switch (machine.phase()) {
            case FOLLOWING -> Shown.CONNECTED;
            case FORMING -> Shown.ISLAND;
            case OBSERVING -> Shown.WAITING;
            case LOCKED -> Shown.LOCKED_OUT;
            case DARK, STOPPED, LOSING, SEPARATING, EARTHING, STARTING, UNLINKING, CLOSING -> Shown.STOPPED;
        };
    }

    /** The position indicator of a switching device. */
    public Reading position(ThingId device) {
        int index = model.device(device);
        return new Reading(
                ReadingKind.POSITION,
                device,
                "",
                machine -> machine.isMechanismClosed(index) ? Shown.CLOSED : Shown.OPEN);
    }

    /** Whether an input or output is on, or a coil energised. */
    public Reading signal(ControlPort port) {
        ReadingKind kind = switch (port.kind() == null ? PortKind.INPUT : port.kind()) {
            case OUTPUT -> ReadingKind.OUTPUT;
            case COIL -> ReadingKind.COIL;
            case INPUT, SUPPLY, AUXILIARY_CONTACT -> ReadingKind.INPUT;
        };
        // An inverter without energy, or switched off, shows nothing at its inputs.
        boolean isOfInverter = kind == ReadingKind.INPUT && (port.at() == null || model.device(port.at()) < 0);
        return new Reading(
                kind,
                port.id(),
                "",
                machine -> machine.isOn(port) && (!isOfInverter || machine.isInverterAwake()) ? Shown.ON : Shown.OFF);
    }

    /** Whether an auxiliary contact is closed. */
    public Reading contact(ControlPort port) {
        int device = port.at() == null ? -1 : model.device(port.at());
        return new Reading(
                ReadingKind.CONTACT,
                port.id(),
                "",
                machine -> device >= 0 && port.closedWhen() != null && machine.isReported(device, port.closedWhen())
                        ? Shown.CLOSED
                        : Shown.OPEN);
    }

    /** Whether a server answers. */
    public Reading bus(BusPort server) {
        return new Reading(
                ReadingKind.BUS, server.id(), "", machine -> machine.isAnswered(server) ? Shown.ANSWERS : Shown.SILENT);
    }

    /** Whether a port is set as planned. */
    public Reading setting(ThingId port) {
        return new Reading(ReadingKind.SETTING, port, "", machine -> {
            for (ControlPort other : machine.defect().ports()) if (other.id().equals(port)) return Shown.OTHERWISE;
            for (BusPort other : machine.defect().buses()) if (other.id().equals(port)) return Shown.OTHERWISE;
            return Shown.AS_PLANNED;
        });
    }

    /** Voltage of a control terminal against the reference of the first supply. */
    public Reading voltage(TerminalId terminal) {
        int node = control.require(terminal);
        return new Reading(ReadingKind.CONTROL_VOLTAGE, terminal.port(), terminal.name(), machine -> {
            SwitchingNet.Solved nets = machine.controlNets();
            int at = nets.potentials(node);
            for (int i = 0; i < control.supplies().size(); i++) {
                if ((at >>> ControlModel.MAINS & 1) != 0) return Shown.LINE_VOLTAGE;
                if ((at >>> ControlModel.plusBit(i) & 1) != 0) return Shown.PLUS;
                if ((at >>> ControlModel.minusBit(i) & 1) != 0) return Shown.MINUS;
            }
            return at == 0 && hangsOnPlus(nets, node) ? Shown.PLUS : Shown.NO_VOLTAGE;
        });
    }

    /** Whether an instrument, which draws next to nothing, shows plus through a coil or an input that is not drawn to minus. */
    private boolean hangsOnPlus(SwitchingNet.Solved nets, int node) {
        int through = 0;
        for (int[] ends : control.loads()) {
            if (nets.isJoined(node, ends[0])) through |= nets.potentials(ends[1]);
            if (nets.isJoined(node, ends[1])) through |= nets.potentials(ends[0]);
        }
        boolean isPlus = false;
        for (int i = 0; i < control.supplies().size(); i++) {
            isPlus |= (through >>> ControlModel.plusBit(i) & 1) != 0;
            // Between a coil on plus and one on minus stands something between.
            if ((through >>> ControlModel.minusBit(i) & 1) != 0) return false;
        }
        return isPlus;
    }

    /** Dead: whether the terminals at both ends of a core are joined. */
    public Reading core(Wire wire) {
        int from = control.require(wire.from());
        int to = control.require(wire.to());
        String mark = wire.core().mark() == null
                ? Integer.toString(wire.position() + 1)
                : wire.core().mark();
        return new Reading(
                ReadingKind.CORE_CONTINUITY,
                wire.cable().id(),
                mark,
                machine -> machine.controlNets().isJoined(from, to) ? Shown.JOINED : Shown.APART);
    }

    /** Dead: end resistors found across the line at the client. */
    public Reading resistance(BusPort client) {
        int d1 = control.node(client, 0);
        int d0 = control.node(client, 1);
        List<BusPort> all = control.buses();
        return new Reading(ReadingKind.BUS_RESISTANCE, client.id(), "", machine -> {
            SwitchingNet.Solved nets = machine.controlNets();
            if (nets.isJoined(d1, d0)) return Shown.SHORTED;
            int resistors = 0;
            for (BusPort port : all) {
                BusPort set = set(machine, port);
                int one = control.node(port, 0);
                int other = control.node(port, 1);
                if (set.terminationOhm() == null || one < 0 || other < 0) continue;
                boolean isAcross = nets.isJoined(d1, one) && nets.isJoined(d0, other)
                        || nets.isJoined(d1, other) && nets.isJoined(d0, one);
                if (isAcross) resistors++;
            }
            return switch (resistors) {
                case 0 -> Shown.NO_RESISTOR;
                case 1 -> Shown.ONE_RESISTOR;
                case 2 -> Shown.TWO_RESISTORS;
                default -> Shown.MORE_RESISTORS;
            };
        });
    }

    private static BusPort set(Machine machine, BusPort port) {
        for (BusPort other : machine.defect().buses()) if (other.id().equals(port.id())) return other;
        return port;
    }

    /** The one that asks, if there is one on a line. */
    public java.util.Optional<BusPort> findClient() {
        return control.buses().stream()
                .filter(port ->
                        port.role() == BusRole.CLIENT && control.node(port, 0) >= 0 && control.node(port, 1) >= 0)
                .findFirst();
    }
}
