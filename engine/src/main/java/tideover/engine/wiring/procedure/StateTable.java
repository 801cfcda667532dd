package tideover.engine.wiring.procedure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import tideover.engine.installation.Installation;
import tideover.engine.site.BusPort;
import tideover.engine.site.BusRole;
import tideover.engine.site.Conductor;
import tideover.engine.site.ControlPort;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PortKind;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.model.ControlReadings;
import tideover.engine.wiring.model.Defect;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.model.Machine;
import tideover.engine.wiring.model.PowerReadings;
import tideover.engine.wiring.model.Reading;
import tideover.engine.wiring.model.Shown;

/**
 * What each indicator, contact and terminal should read in each operating state, computed from the healthy model.
 *
 * @param states the operating states of the house, the columns
 * @param rows   what is read, group by group
 */
public record StateTable(List<OperatingState> states, List<Row> rows) {
    public StateTable {
        states = List.copyOf(states);
        rows = List.copyOf(rows);
    }

    /** What a row is about. */
    public enum Group {
        INDICATORS,
        CONTACTS,
        SIGNALS,
        CONTROL_TERMINALS,
        POWER_TERMINALS
    }

    /**
     * One line of the table.
     *
     * @param shown what it should show, by state
     */
    public record Row(Group group, Reading reading, Map<OperatingState, Shown> shown) {
        public Row {
            shown = Map.copyOf(shown);
        }
    }

    /** The table of a house; without rows where nothing can form an island. */
    public static StateTable of(HouseModel model) {
        List<OperatingState> states = model.installation().states();
        if (model.findLeader().isEmpty()) return new StateTable(states, List.of());
        Map<OperatingState, Machine> machines = new EnumMap<>(OperatingState.class);
        Machine machine = model.machine(Defect.NONE);
        for (Situation situation : Situation.values()) {
            situation.enter(machine);
            OperatingState state = state(situation);
            if (state != null && states.contains(state)) machines.put(state, machine.fork());
        }
        List<Row> rows = new ArrayList<>();
        for (Map.Entry<Reading, Group> entry : readings(model).entrySet()) {
            Map<OperatingState, Shown> shown = new EnumMap<>(OperatingState.class);
            machines.forEach((state, at) -> shown.put(state, entry.getKey().read(at)));
            rows.add(new Row(entry.getValue(), entry.getKey(), shown));
        }
        return new StateTable(states, rows);
    }

    /** The situation that stands for a state, with all breakers on where it is in service. */
    private static @org.jspecify.annotations.Nullable OperatingState state(Situation situation) {
        return switch (situation) {
            case CONNECTED -> OperatingState.CONNECTED;
            case ISLAND -> OperatingState.ISLAND_GRID_DEAD;
            case WAITING -> OperatingState.ISLAND_GRID_WAITING;
            case DARK -> OperatingState.DARK;
            case BY_PASSED -> OperatingState.BY_PASSED;
            default -> null;
        };
    }

    private static Map<Reading, Group> readings(HouseModel model) {
        Map<Reading, Group> all = new java.util.LinkedHashMap<>();
        Installation installation = model.installation();
        ControlReadings control = model.controlReadings();
        model.findLeader().ifPresent(leader -> all.put(control.mode(leader.id()), Group.INDICATORS));
        for (IslandingSwitch device : installation.islandingSwitches())
            all.put(control.position(device.id()), Group.INDICATORS);
        for (NeutralEarthSwitch device : installation.neutralEarthSwitches())
            all.put(control.position(device.id()), Group.INDICATORS);
        for (BusPort port : model.wiring().busPorts())
            if (port.role() == BusRole.SERVER) all.put(control.bus(port), Group.INDICATORS);
        for (ControlPort port : model.wiring().controlPorts()) {
            if (port.terminals() == null || port.terminals().isEmpty()) continue;
            boolean isPair = port.terminals().size() >= 2;
            if (port.kind() == PortKind.AUXILIARY_CONTACT && isPair) all.put(control.contact(port), Group.CONTACTS);
            if (port.kind() == PortKind.COIL && isPair
                    || port.kind() == PortKind.INPUT
                    || port.kind() == PortKind.OUTPUT) all.put(control.signal(port), Group.SIGNALS);
        }
        for (ControlPort port : model.wiring().controlPorts()) {
            if (port.terminals() == null) continue;
            for (String name : port.terminals()) all.put(control.voltage(port.terminal(name)), Group.CONTROL_TERMINALS);
        }
        PowerReadings power = model.powerReadings();
        for (IslandingSwitch device : installation.islandingSwitches())
            for (Terminals side : Terminals.values())
                for (Reading reading : terminals(power, device.id(), side)) all.put(reading, Group.POWER_TERMINALS);
        return all;
    }

    /** Line to line once, each line to neutral, the neutral to earth. */
    private static List<Reading> terminals(PowerReadings power, ThingId device, Terminals side) {
        List<Conductor> all = power.conductors(device, side);
        List<Reading> readings = new ArrayList<>();
        Conductor neutral = all.contains(Conductor.N) ? Conductor.N : Conductor.PEN;
        if (all.contains(Conductor.L1) && all.contains(Conductor.L2))
            readings.add(power.voltage(device, side, Conductor.L1, Conductor.L2));
        if (!all.contains(neutral)) return readings;
        for (Conductor line : all) if (line.isLine()) readings.add(power.voltage(device, side, line, neutral));
        readings.add(power.voltage(device, side, neutral, Conductor.PE));
        readings.add(power.voltage(device, side, Conductor.L1, Conductor.PE));
        return readings;
    }
}
