package tideover.engine.wiring.procedure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import tideover.engine.installation.control.Wire;
import tideover.engine.wiring.model.Defect;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.model.Machine;
import tideover.engine.wiring.model.Machine.Until;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.model.Surroundings;
import tideover.engine.wiring.net.Edit;
import tideover.engine.wiring.net.Nets;

/** Runs a whole procedure on the model, once healthy and then with one mistake after the other. For one thread. */
public final class Run {

    private static final Shown[] SHOWN = Shown.values();

    private final Procedure procedure;
    private final HouseModel model;
    private final Map<Situation, Group> groups = new EnumMap<>(Situation.class);
    private final List<Group> withoutCore = new ArrayList<>();
    private final byte[] expected;
    private final Map<Situation, Nets> healthyNets = new EnumMap<>(Situation.class);

    /** Readings taken in one situation: those of power first. */
    private static final class Group {
        private final List<PlannedReading> power = new ArrayList<>();
        private final List<PlannedReading> other = new ArrayList<>();
        private Edit lifted = Edit.NONE;
    }

    private Run(Procedure procedure) {
        this.procedure = procedure;
        this.model = procedure.model();
        Map<Wire, Group> byWire = new java.util.LinkedHashMap<>();
        for (PlannedReading planned : procedure.readings()) {
            Wire wire = planned.lifted();
            Group group = wire == null
                    ? groups.computeIfAbsent(planned.situation(), s -> new Group())
                    : byWire.computeIfAbsent(wire, w -> new Group());
            if (wire != null) group.lifted = Edit.opened(wire.index());
            (planned.reading().isOfPower() ? group.power : group.other).add(planned);
        }
        withoutCore.addAll(byWire.values());
        expected = new byte[procedure.readings().size()];
        read(Defect.NONE, expected, null);
    }

    /** The healthy run of a procedure. */
    public static Run of(Procedure procedure) {
        return new Run(procedure);
    }

    /** The procedure. */
    public Procedure procedure() {
        return procedure;
    }

    /** What a reading should show. */
    public Shown expected(PlannedReading reading) {
        return SHOWN[expected[reading.index()]];
    }

    /** What every reading should show, in the order of the readings. */
    public byte[] expectations() {
        return expected.clone();
    }

    /** What every reading shows with a defect, in the order of the readings. */
    public byte[] readings(Defect defect) {
        byte[] shown = new byte[expected.length];
        read(defect, shown, expected);
        return shown;
    }

    /** The word for one of {@link #readings}. */
    public static Shown shown(byte value) {
        return SHOWN[value];
    }

    /** Whether a step reveals what led to these readings: one of its own differs from what it should be. */
    public boolean reveals(Step step, byte[] readings) {
        for (int index : step.readings()) if (readings[index] != expected[index]) return true;
        return false;
    }

    private void read(Defect defect, byte[] into, byte @org.jspecify.annotations.Nullable [] healthy) {
        Machine machine = model.machine(defect);
        for (Situation situation : Situation.values()) {
            situation.enter(machine);
            Group group = groups.get(situation);
            if (healthy == null) healthyNets.put(situation, machine.nets());
            if (group != null) read(group, machine, into, healthy, situation);
        }
        for (Group group : withoutCore) {
            boolean isOfPowerOnly = healthy != null
                    && defect.control().isNone()
                    && defect.failures().isEmpty()
                    && defect.ports().isEmpty()
                    && defect.buses().isEmpty();
            if (isOfPowerOnly) {
                // A core more or less says nothing new about lines and neutrals.
                copy(group.power, healthy, into);
                copy(group.other, healthy, into);
                continue;
            }
            Defect both = new Defect(
                    defect.power(),
                    defect.control().and(group.lifted),
                    defect.failures(),
                    defect.ports(),
                    defect.buses());
            Machine lifted = model.machine(both);
            lifted.run(Surroundings.IN_SERVICE.withBreakers(false), Until.AT_REST);
            lifted.run(Surroundings.IN_SERVICE.withBreakers(false).withGrid(false), Until.AT_REST);
            read(group, lifted, into, null, Situation.ISLAND_UNLOADED);
        }
    }

    private void read(
            Group group,
            Machine machine,
            byte[] into,
            byte @org.jspecify.annotations.Nullable [] healthy,
            Situation situation) {
        if (healthy != null && machine.nets() == healthyNets.get(situation)) copy(group.power, healthy, into);
        else for (PlannedReading planned : group.power) into[planned.index()] = value(planned, machine);
        for (PlannedReading planned : group.other) into[planned.index()] = value(planned, machine);
    }

    private static void copy(List<PlannedReading> readings, byte[] from, byte[] into) {
        for (PlannedReading planned : readings) into[planned.index()] = from[planned.index()];
    }

    private static byte value(PlannedReading planned, Machine machine) {
        return (byte) planned.reading().read(machine).ordinal();
    }
}
