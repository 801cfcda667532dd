package tideover.engine.wiring.procedure;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tideover.engine.installation.control.Wire;
import tideover.engine.wiring.model.Defect;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.model.Machine;
import tideover.engine.wiring.model.Machine.Until;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.net.Edit;
import tideover.engine.wiring.net.Nets;
import tideover.engine.wiring.net.Potential;

/** Runs a whole procedure on the model, once healthy and then with one mistake after the other. For one thread. */
public final class Run {

    private static final Shown[] SHOWN = Shown.values();

    private final Procedure procedure;
    private final HouseModel model;
    private final Map<Situation, Group> groups = new EnumMap<>(Situation.class);
    private final List<Group> withoutCore = new ArrayList<>();
    private final List<List<Integer>> stepsOf = new ArrayList<>();
    private final byte[] expected;
    private final Map<Situation, Nets> healthyNets = new EnumMap<>(Situation.class);

    /** Readings taken in one situation: those of power first. */
    private static final class Group {
        private final List<PlannedReading> power = new ArrayList<>();
        private final Map<List<Integer>, Cluster> clusters = new LinkedHashMap<>();
        private final List<PlannedReading> other = new ArrayList<>();
        private Edit lifted = Edit.NONE;
    }

    /** Readings that depend on nothing but the potentials at a few terminals. */
    private record Cluster(Terminals terminals, List<PlannedReading> readings) {}

    private static final class Terminals {
        private final int[] nodes;

        private Terminals(List<Integer> nodes) {
            this.nodes = nodes.stream().mapToInt(i -> i).toArray();
        }
    }

    private Run(Procedure procedure) {
        this.procedure = procedure;
        this.model = procedure.model();
        Map<Wire, Group> byWire = new LinkedHashMap<>();
        for (PlannedReading planned : procedure.readings()) {
            Wire wire = planned.lifted();
            Group group = wire == null
                    ? groups.computeIfAbsent(planned.situation(), s -> new Group())
                    : byWire.computeIfAbsent(wire, w -> new Group());
            if (wire != null) group.lifted = Edit.opened(wire.index());
            List<Integer> terminals = planned.reading().terminals();
            if (!terminals.isEmpty() && wire == null)
                group.clusters
                        .computeIfAbsent(terminals, nodes -> new Cluster(new Terminals(nodes), new ArrayList<>()))
                        .readings()
                        .add(planned);
            else (planned.reading().isOfPower() ? group.power : group.other).add(planned);
        }
        withoutCore.addAll(byWire.values());
        for (int i = 0; i < procedure.readings().size(); i++) stepsOf.add(new ArrayList<>(2));
        for (Step step : procedure.steps())
            for (int reading : step.readings()) stepsOf.get(reading).add(step.index());
        expected = new byte[procedure.readings().size()];
        Machine machine = model.machine(Defect.NONE);
        for (Situation situation : Situation.values()) {
            situation.enter(machine);
            healthyNets.put(situation, machine.nets());
            Group group = groups.get(situation);
            if (group != null) takeAll(group, machine, expected);
        }
        for (Group group : withoutCore) takeAll(group, lifted(Defect.NONE, group), expected);
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
        Machine machine = model.machine(defect);
        for (Situation situation : Situation.values()) {
            situation.enter(machine);
            Group group = groups.get(situation);
            if (group != null) take(group, machine, requireNonNull(healthyNets.get(situation)), shown);
        }
        for (Group group : withoutCore) {
            if (defect.power().isNone()) takeAll(group, lifted(defect, group), shown);
            else copy(group, shown);
        }
        return shown;
    }

    /** The word for one of {@link #readings}. */
    public static Shown shown(byte value) {
        return SHOWN[value];
    }

    /** The steps that reveal what led to these readings, by their index. */
    public BitSet revealing(byte[] readings) {
        BitSet revealing = new BitSet();
        for (int reading = 0; reading < readings.length; reading++)
            if (readings[reading] != expected[reading]) for (int step : stepsOf.get(reading)) revealing.set(step);
        return revealing;
    }

    /** Whether a step reveals what led to these readings: one of its own differs from what it should be. */
    public boolean reveals(Step step, byte[] readings) {
        for (int index : step.readings()) if (readings[index] != expected[index]) return true;
        return false;
    }

    /**
     * The loss of the grid with one more core lifted. It is tried when lines and neutrals have been found right, so it
     * tells nothing of mistakes in these.
     */
    private Machine lifted(Defect defect, Group group) {
        Machine machine = model.machine(new Defect(
                defect.power(), defect.control().and(group.lifted), defect.failures(), defect.ports(), defect.buses()));
        machine.run(Situation.CONNECTED_UNLOADED.surroundings(), Until.AT_REST);
        machine.run(Situation.ISLAND_UNLOADED.surroundings(), Until.AT_REST);
        return machine;
    }

    private static void takeAll(Group group, Machine machine, byte[] into) {
        for (Cluster cluster : group.clusters.values()) take(cluster.readings(), machine, into);
        take(group.power, machine, into);
        take(group.other, machine, into);
    }

    /** What stands as in the healthy house reads as there. */
    private void take(Group group, Machine machine, Nets healthy, byte[] into) {
        Nets nets = machine.nets();
        if (nets == healthy) {
            for (Cluster cluster : group.clusters.values()) copy(cluster.readings(), into);
            copy(group.power, into);
        } else {
            boolean isEarthedAlike = nets.links(Potential.System.GRID) == healthy.links(Potential.System.GRID)
                    && nets.links(Potential.System.ISLAND) == healthy.links(Potential.System.ISLAND);
            for (Cluster cluster : group.clusters.values())
                if (isEarthedAlike && nets.hasPotentialsOf(healthy, cluster.terminals().nodes))
                    copy(cluster.readings(), into);
                else take(cluster.readings(), machine, into);
            take(group.power, machine, into);
        }
        take(group.other, machine, into);
    }

    private void copy(Group group, byte[] into) {
        copy(group.power, into);
        copy(group.other, into);
    }

    private void copy(List<PlannedReading> readings, byte[] into) {
        for (int i = 0; i < readings.size(); i++) {
            int index = readings.get(i).index();
            into[index] = expected[index];
        }
    }

    private static void take(List<PlannedReading> readings, Machine machine, byte[] into) {
        for (int i = 0; i < readings.size(); i++) {
            PlannedReading planned = readings.get(i);
            into[planned.index()] = value(planned, machine);
        }
    }

    private static byte value(PlannedReading planned, Machine machine) {
        return (byte) planned.reading().read(machine).ordinal();
    }
}
