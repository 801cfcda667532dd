package tideover.engine.wiring.model;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.installation.Installation;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.net.Edit;
import tideover.engine.wiring.net.Nets;
import tideover.engine.wiring.net.Potential;
import tideover.engine.wiring.net.Potential.System;

/** What an instrument shows at power terminals. */
public final class PowerReadings {

    private static final Conductor[] ORDER = {
        Conductor.L1, Conductor.L2, Conductor.L3, Conductor.N, Conductor.PEN, Conductor.PE
    };

    private final Installation installation;

    PowerReadings(Installation installation) {
        this.installation = installation;
    }

    /** The conductors that a thing has on one side, lines first. */
    public List<Conductor> conductors(ThingId thing, Terminals side) {
        List<Conductor> found = new ArrayList<>(5);
        for (Conductor conductor : ORDER)
            if (installation.edgesAt(installation.node(thing, side, conductor)).length > 0) found.add(conductor);
        return found;
    }

    /** Voltages between all pairs that matter: line to line, line to neutral, line and neutral to earth. */
    public List<Reading> voltages(ThingId thing, Terminals side) {
        List<Conductor> all = conductors(thing, side);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < all.size(); i++)
            for (int j = i + 1; j < all.size(); j++) readings.add(voltage(thing, side, all.get(i), all.get(j)));
        return readings;
    }

    /** Voltage between two conductors of a thing; where it has no PE, to the main earth. */
    public Reading voltage(ThingId thing, Terminals side, Conductor one, Conductor other) {
        int a = installation.node(thing, side, one);
        boolean isToMainEarth =
                other == Conductor.PE && !conductors(thing, side).contains(Conductor.PE);
        int b = isToMainEarth ? installation.mainEarth() : installation.node(thing, side, other);
        return new Reading(
                ReadingKind.VOLTAGE,
                thing,
                detail(thing, side, one, other),
                nodes(thing, side),
                machine -> voltage(machine.nets(), a, b));
    }

    private List<Integer> nodes(ThingId thing, Terminals side) {
        return conductors(thing, side).stream()
                .map(conductor -> installation.node(thing, side, conductor))
                .toList();
    }

    private String detail(ThingId thing, Terminals side, Conductor one, Conductor other) {
        String pair = one + "-" + other;
        boolean hasTwoSides = installation
                .find(thing)
                .filter(t -> t instanceof tideover.engine.site.IslandingSwitch)
                .isPresent();
        return !hasTwoSides ? pair : (side == Terminals.INCOMING ? "grid side " : "island side ") + pair;
    }

    static Shown voltage(Nets nets, int a, int b) {
        int atA = nets.potentials(a);
        int atB = nets.potentials(b);
        for (System system : System.values()) {
            int one = term(nets, atA, system);
            int other = term(nets, atB, system);
            if (one < 0 || other < 0) continue;
            if (one == other) return Shown.NO_VOLTAGE;
            return one == 3 || other == 3 ? Shown.LINE_VOLTAGE : Shown.LINE_TO_LINE_VOLTAGE;
        }
        int both = atA | atB;
        if ((both & Potential.LINES) == 0) return Shown.NO_VOLTAGE;
        boolean mixed = (both & (Potential.GRID_LINES | Potential.GRID_N)) != 0
                && (both & (Potential.ISLAND_LINES | Potential.ISLAND_N)) != 0;
        return mixed ? Shown.UNSTEADY : Shown.FLOATING;
    }

    /** A line 0 to 2, neutral or, where that is earthed, earth 3; -1 where the system does not reach. */
    private static int term(Nets nets, int potentials, System system) {
        int bits = system.of(potentials);
        if ((bits & 7) != 0) return Integer.numberOfTrailingZeros(bits & 7);
        if ((bits & 8) != 0) return 3;
        if (nets.links(system) == 0) return -1;
        // Earth, and the neutral of the other source where that is earthed, are as good as the neutral.
        System other = system == System.GRID ? System.ISLAND : System.GRID;
        boolean isEarthed = (potentials & Potential.EARTH) != 0
                || (potentials & other.neutral()) != 0 && (potentials & other.lines()) == 0 && nets.links(other) > 0;
        return isEarthed ? 3 : -1;
    }

    /** What a meter shows from a line to its measuring neutral; its index is its place among the meters. */
    public Reading metered(ThingId meter, int index, Conductor line) {
        int a = installation.node(meter, Terminals.INCOMING, line);
        int b = tideover.engine.wiring.net.PowerNet.measuringTerminal(installation, index);
        return new Reading(
                ReadingKind.METER, meter, line.name(), List.of(a, b), machine -> voltage(machine.nets(), a, b));
    }

    /** Phase sequence at a thing with three lines. */
    public Reading rotation(ThingId thing, Terminals side) {
        int[] lines = installation.lines(thing).stream()
                .mapToInt(line -> installation.node(thing, side, line))
                .toArray();
        return new Reading(ReadingKind.ROTATION, thing, "", nodes(thing, side), machine -> {
            for (System system : System.values()) {
                int sequence = Senses.sequence(machine.nets(), lines, system);
                if (sequence != 0) return sequence > 0 ? Shown.CLOCKWISE : Shown.ANTICLOCKWISE;
            }
            return Shown.NO_VOLTAGE;
        });
    }

    /** Whether a load between a circuit's first line and its neutral runs. */
    public Reading load(Fed circuit) {
        int line = line(circuit);
        int neutral = neutral(circuit);
        return new Reading(ReadingKind.LOAD, circuit.id(), "", machine -> {
            Return way = way(machine.nets(), line, neutral);
            if (way == Return.NONE) return Shown.NOTHING_HAPPENS;
            for (System system : System.values())
                if (machine.nets().tripsUnderLoad(line, neutral, system)) return Shown.TRIPS;
            return Shown.RUNS;
        });
    }

    /** Current in links and protective conductors while that load is switched in. */
    public Reading earthCurrent(Fed circuit) {
        int line = line(circuit);
        int neutral = neutral(circuit);
        return new Reading(ReadingKind.EARTH_CURRENT, circuit.id(), "", machine -> {
            Nets nets = machine.nets();
            Return way = way(nets, line, neutral);
            if (way == Return.OVER_EARTH) return Shown.FLOWS;
            for (System system : System.values())
                if (way == Return.OVER_NEUTRAL
                        && (nets.potentials(line) & system.lines()) != 0
                        && nets.links(system) > 1) return Shown.FLOWS;
            return Shown.NO_CURRENT;
        });
    }

    /** How a load's current returns. */
    private enum Return {
        NONE,
        OVER_NEUTRAL,
        OVER_EARTH
    }

    private static Return way(Nets nets, int line, int neutral) {
        if (neutral < 0) return Return.NONE;
        for (System system : System.values()) {
            if ((nets.potentials(line) & system.lines()) == 0) continue;
            int at = nets.potentials(neutral);
            if ((at & system.neutral()) != 0) return Return.OVER_NEUTRAL;
            if ((at & (Potential.EARTH | Potential.NEUTRALS)) != 0 && nets.links(system) > 0) return Return.OVER_EARTH;
        }
        return Return.NONE;
    }

    /** Whether the RCD of a circuit trips when tested from line to PE at its end. */
    public Reading rcdTest(Fed circuit) {
        int line = line(circuit);
        int protective = installation.node(circuit.id(), Terminals.OUTGOING, Conductor.PE);
        return new Reading(ReadingKind.RCD_TEST, circuit.id(), "", machine -> {
            Nets nets = machine.nets();
            for (System system : System.values()) {
                if ((nets.potentials(line) & system.lines()) == 0) continue;
                boolean hasPath = (nets.potentials(protective) & (Potential.EARTH | system.neutral())) != 0;
                if (hasPath && nets.links(system) > 0 && nets.hasRcd(line, system)) return Shown.TRIPS;
            }
            return Shown.NOTHING_HAPPENS;
        });
    }

    /** Dead: whether two terminals are joined. */
    public Reading continuity(String detail, ThingId place, int a, int b) {
        return new Reading(
                ReadingKind.CONTINUITY,
                place,
                detail,
                machine -> machine.nets().isJoined(a, b) ? Shown.JOINED : Shown.APART);
    }

    /** Whether a fixed link between neutral and earth is to be seen at a board that should have none, or one less. */
    public Reading linkSeen(ThingId board) {
        int neutral = installation.node(board, Terminals.OUTGOING, Conductor.N);
        int protective = installation.node(board, Terminals.OUTGOING, Conductor.PE);
        return new Reading(ReadingKind.LINK_SEEN, board, "", machine -> {
            for (Edit.Change change : machine.defect().power().changes())
                if (change instanceof Edit.Joined joined && joined.nodeA() == neutral && joined.nodeB() == protective)
                    return Shown.OTHERWISE;
            return Shown.AS_PLANNED;
        });
    }

    private int line(Fed circuit) {
        List<Conductor> lines = installation.lines(circuit.id());
        return installation.node(circuit.id(), Terminals.OUTGOING, lines.isEmpty() ? Conductor.L1 : lines.get(0));
    }

    private int neutral(Fed circuit) {
        for (Conductor neutral : new Conductor[] {Conductor.N, Conductor.PEN}) {
            int node = installation.node(circuit.id(), Terminals.OUTGOING, neutral);
            if (installation.edgesAt(node).length > 0) return node;
        }
        return -1;
    }
}
