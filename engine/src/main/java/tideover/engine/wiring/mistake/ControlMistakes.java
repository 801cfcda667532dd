package tideover.engine.wiring.mistake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.control.Wire;
import tideover.engine.site.BusMedium;
import tideover.engine.site.BusPort;
import tideover.engine.site.BusRole;
import tideover.engine.site.ControlPort;
import tideover.engine.site.PortKind;
import tideover.engine.site.SignalMeaning;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.model.Defect;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.net.Edit;
import tideover.engine.wiring.net.Edit.End;
import tideover.engine.wiring.net.Joints;

/** Mistakes in control and bus wiring and in the settings of both. */
final class ControlMistakes {

    private static final double RESISTOR_OHM = 120;

    private final HouseModel model;
    private final Joints cores;
    private final Mistakes mistakes;

    ControlMistakes(HouseModel model, Mistakes mistakes) {
        this.model = model;
        this.cores = model.controlJoints();
        this.mistakes = mistakes;
    }

    void list() {
        Map<ThingId, List<Wire>> cables = new LinkedHashMap<>();
        for (Wire wire : model.wiring().wires())
            cables.computeIfAbsent(wire.cable().id(), cable -> new ArrayList<>())
                    .add(wire);
        cables.forEach(this::cable);
        for (Wire wire : model.wiring().wires()) wrongNumbers(wire);
        settings();
        bus();
    }

    private static String mark(Wire wire) {
        return Objects.requireNonNullElse(wire.core().mark(), "") + "#" + (wire.position() + 1);
    }

    private void cable(ThingId cable, List<Wire> wires) {
        for (int a = 0; a < wires.size(); a++) {
            Wire one = wires.get(a);
            List<String> name = List.of(mark(one));
            int node = cores.node(one.index(), End.TO);
            mistakes.add(MistakeKind.CORE_OPEN, cable, name, Defect.control(Edit.opened(one.index())));
            touching(MistakeKind.CORE_TO_EARTH, cable, name, node, model.earthNode());
            touching(MistakeKind.CORE_TO_LINE, cable, name, node, model.lineNode());
            for (ControlPort supply : model.wiring().controlPorts(PortKind.SUPPLY)) {
                if (supply.terminals() == null || supply.terminals().size() < 2) continue;
                TerminalId plus = supply.terminal(supply.terminals().get(0));
                TerminalId minus = supply.terminal(supply.terminals().get(1));
                touching(MistakeKind.CORE_TO_PLUS, cable, name, node, model.node(plus));
                touching(MistakeKind.CORE_TO_REFERENCE, cable, name, node, model.node(minus));
                break;
            }
            for (int b = a + 1; b < wires.size(); b++) pair(cable, one, wires.get(b));
        }
    }

    private void touching(MistakeKind kind, ThingId cable, List<String> name, int node, int other) {
        mistakes.add(kind, cable, name, Defect.control(Edit.joined(node, other)));
    }

    private void pair(ThingId cable, Wire one, Wire other) {
        List<String> names = List.of(mark(one), mark(other));
        mistakes.add(
                MistakeKind.CORES_TOUCHING,
                cable,
                names,
                Defect.control(Edit.joined(cores.node(one.index(), End.TO), cores.node(other.index(), End.TO))));
        for (End end : End.values()) {
            List<String> atEnd = List.of(mark(one), mark(other), (end == End.FROM ? one.from() : one.to()).toString());
            mistakes.add(
                    MistakeKind.CORES_EXCHANGED,
                    cable,
                    atEnd,
                    Defect.control(Edit.exchanged(cores, one.index(), end, other.index(), end)));
        }
    }

    /** The core of an input or output on the terminal of another input or output of the same device. */
    private void wrongNumbers(Wire wire) {
        for (End end : End.values()) {
            TerminalId at = end == End.FROM ? wire.from() : wire.to();
            ControlPort own = signal(at.port());
            if (own == null) continue;
            for (ControlPort other : model.wiring().controlPorts()) {
                boolean isAlike = other.kind() == own.kind()
                        && Objects.equals(other.at(), own.at())
                        && !other.id().equals(own.id());
                if (!isAlike || other.terminals() == null) continue;
                for (String name : other.terminals())
                    mistakes.add(
                            MistakeKind.WRONG_NUMBER,
                            wire.cable().id(),
                            List.of(mark(wire), other.terminal(name).toString()),
                            Defect.control(Edit.moved(wire.index(), end, model.node(other.terminal(name)))));
            }
        }
    }

    private @Nullable ControlPort signal(ThingId port) {
        return model.wiring().findPort(port).orElse(null) instanceof ControlPort signal
                        && (signal.kind() == PortKind.INPUT || signal.kind() == PortKind.OUTPUT)
                ? signal
                : null;
    }

    private void settings() {
        ThingId leader = model.findLeader().map(inverter -> inverter.id()).orElse(null);
        List<ControlPort> set = model.wiring().controlPorts().stream()
                .filter(port -> port.kind() == PortKind.INPUT || port.kind() == PortKind.OUTPUT)
                .filter(port -> Objects.equals(port.at(), leader) && port.onMeans() != null)
                .toList();
        for (int a = 0; a < set.size(); a++) {
            ControlPort one = set.get(a);
            SignalMeaning opposite = opposite(one.onMeans());
            if (opposite != null)
                mistakes.add(MistakeKind.WRONG_SENSE, one.id(), List.of(), Defect.set(with(one, opposite)));
            for (int b = a + 1; b < set.size(); b++) {
                ControlPort other = set.get(b);
                if (other.kind() != one.kind() || other.onMeans() == one.onMeans()) continue;
                mistakes.add(
                        MistakeKind.SETTINGS_EXCHANGED,
                        one.id(),
                        List.of(),
                        other.id(),
                        Defect.set(with(one, other.onMeans()), with(other, one.onMeans())));
            }
        }
    }

    private static @Nullable SignalMeaning opposite(@Nullable SignalMeaning meaning) {
        if (meaning == null) return null;
        return switch (meaning) {
            case SWITCH_CLOSED -> SignalMeaning.SWITCH_OPEN;
            case SWITCH_OPEN -> SignalMeaning.SWITCH_CLOSED;
            case LINK_CLOSED -> SignalMeaning.LINK_OPEN;
            case LINK_OPEN -> SignalMeaning.LINK_CLOSED;
            case RELAYS_OPEN, GRID_PRESENT, MAY_RUN -> null;
        };
    }

    private static ControlPort with(ControlPort port, @Nullable SignalMeaning meaning) {
        return new ControlPort(
                port.id(),
                port.designation(),
                port.at(),
                port.kind(),
                port.terminals(),
                port.number(),
                port.form(),
                meaning,
                port.closedWhen(),
                port.voltageV(),
                port.leastVoltageV(),
                port.currentA(),
                port.leastCurrentA(),
                port.operateTimeS(),
                port.releaseTimeS());
    }

    private void bus() {
        List<BusPort> ports = model.wiring().busPorts();
        for (BusPort port : ports) {
            boolean isLine = port.medium() != BusMedium.TCP;
            if (port.role() == BusRole.SERVER && port.address() != null) {
                int address = port.address();
                set(
                        MistakeKind.ADDRESS_WRONG,
                        port,
                        address == 247 ? 246 : address + 100 > 247 ? address - 100 : address + 100,
                        port.rateBitPerS(),
                        port.terminationOhm());
                for (BusPort other : ports)
                    if (other.role() == BusRole.SERVER
                            && !other.id().equals(port.id())
                            && other.address() != null
                            && !other.address().equals(port.address()))
                        set(
                                MistakeKind.ADDRESS_TWICE,
                                port,
                                other.address(),
                                port.rateBitPerS(),
                                port.terminationOhm());
            }
            if (!isLine) continue;
            if (port.rateBitPerS() != null)
                set(MistakeKind.RATE_WRONG, port, port.address(), port.rateBitPerS() * 2, port.terminationOhm());
            if (port.terminationOhm() != null)
                set(MistakeKind.RESISTOR_MISSING, port, port.address(), port.rateBitPerS(), null);
            else set(MistakeKind.RESISTOR_EXTRA, port, port.address(), port.rateBitPerS(), RESISTOR_OHM);
        }
    }

    private void set(
            MistakeKind kind,
            BusPort port,
            @Nullable Integer address,
            @Nullable Integer rateBitPerS,
            @Nullable Double terminationOhm) {
        BusPort other = new BusPort(
                port.id(),
                port.designation(),
                port.at(),
                port.medium(),
                port.role(),
                port.terminals(),
                port.passThrough(),
                address,
                port.networkAddress(),
                rateBitPerS,
                port.parity(),
                port.stopBits(),
                port.unitLoadRatio(),
                terminationOhm,
                port.biasOhm(),
                port.biasVoltageV(),
                port.registers(),
                port.requests(),
                port.turnaroundS(),
                port.responseNeededS(),
                port.timeoutS());
        boolean isAddress = kind == MistakeKind.ADDRESS_TWICE || kind == MistakeKind.ADDRESS_WRONG;
        mistakes.add(kind, port.id(), isAddress ? List.of(String.valueOf(address)) : List.of(), Defect.set(other));
    }
}
