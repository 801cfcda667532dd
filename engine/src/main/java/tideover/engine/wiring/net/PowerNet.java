package tideover.engine.wiring.net;

import java.util.Arrays;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Edge.Part;
import tideover.engine.installation.Installation;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.Meter;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.net.Potential.System;

/**
 * Lines, neutrals and earth of an installation, with a mistake or without. Joints are the edges of the netlist under their
 * own index, then the measuring neutrals of the meters.
 */
public final class PowerNet {

    /** A joint that no gate opens. */
    public static final int ALWAYS = -1;

    final Structure structure;
    final Joints joints;
    private final int[] starts;
    /** Joints of metal at each node, the node at their other end, and whether anything may open them. */
    private final int[] adjacent;

    private final int[] neighbours;
    private final boolean[] opens;
    private final int[] ties;

    /**
     * What a mistake does not change.
     *
     * <p>{@code gates}: which gate closes a joint; {@code parts}: what a joint is, {@link #METAL} and so on; {@code owners}: the
     * protected thing whose device opens a joint, or -1; {@code rcds}: likewise its residual current device.
     */
    record Structure(
            int nodes,
            Joints planned,
            Marks gates,
            Marks owners,
            Marks rcds,
            Marks parts,
            Marks protective,
            Starts starts,
            int protectedThings) {}

    /** A number for each joint or node. Held apart because an array in a record would be shared silently. */
    static final class Marks {
        final int[] of;

        Marks(int[] of) {
            this.of = of;
        }
    }

    /** Where potentials start: four rows of nodes for each system, and the main earthing terminal. */
    static final class Starts {
        final int[][] grid;
        final int[][] island;
        final int mainEarth;

        Starts(int[][] grid, int[][] island, int mainEarth) {
            this.grid = grid;
            this.island = island;
            this.mainEarth = mainEarth;
        }
    }

    /** Joint is plain metal. */
    static final int METAL = 0;
    /** Joint ties a neutral to earth. */
    static final int LINK = 1;
    /** Joint splits a PEN. */
    static final int SPLIT = 2;
    /** Joint leads through the soil or the network and is no metal of the house. */
    static final int SOIL = 3;

    private PowerNet(Structure structure, Joints joints) {
        this.structure = structure;
        this.joints = joints;
        starts = new int[structure.nodes + 1];
        for (int i = 0; i < joints.count(); i++) {
            if (!isMetal(i)) continue;
            starts[joints.from[i]]++;
            starts[joints.to[i]]++;
        }
        int sum = 0;
        for (int node = 0; node <= structure.nodes; node++) {
            sum += starts[node];
            starts[node] = sum;
        }
        adjacent = new int[sum];
        neighbours = new int[sum];
        opens = new boolean[sum];
        for (int i = 0; i < joints.count(); i++) {
            if (!isMetal(i)) continue;
            join(--starts[joints.from[i]], i, joints.to[i]);
            join(--starts[joints.to[i]], i, joints.from[i]);
        }
        ties = ties();
    }

    private boolean isMetal(int joint) {
        return joints.from[joint] >= 0 && joints.to[joint] >= 0 && part(joint) == METAL;
    }

    private void join(int place, int joint, int neighbour) {
        adjacent[place] = joint;
        neighbours[place] = neighbour;
        boolean isPlanned = joint < structure.gates.of.length;
        opens[place] = isPlanned && (structure.gates.of[joint] != ALWAYS || structure.owners.of[joint] >= 0);
    }

    /** Joints that tie a neutral to earth or, by a mistake, might. */
    private int[] ties() {
        int[] found = new int[joints.count()];
        int count = 0;
        Joints planned = structure.planned;
        for (int i = 0; i < joints.count(); i++) {
            if (joints.from[i] < 0 || joints.to[i] < 0) continue;
            boolean isPlanned =
                    i < planned.count() && joints.from[i] == planned.from[i] && joints.to[i] == planned.to[i];
            int part = part(i);
            if (part == LINK || part == SPLIT || part == METAL && !isPlanned) found[count++] = i;
        }
        return Arrays.copyOf(found, count);
    }

    /** Says which gate opens and closes an edge. */
    public interface Gating {
        /** Number of the gate, 0 to 63, or {@link #ALWAYS}. */
        int gate(Edge edge);
    }

    /** The net of an installation as planned and built. */
    public static PowerNet of(Installation installation, Gating gating) {
        int meters = 0;
        for (Meter meter : installation.meters()) if (measuringNeutral(installation, meter) >= 0) meters++;
        int edges = installation.edges().size();
        int[] from = new int[edges + meters];
        int[] to = new int[edges + meters];
        int[] gates = new int[edges + meters];
        int[] owners = new int[edges + meters];
        int[] rcds = new int[edges + meters];
        int[] parts = new int[edges + meters];
        Arrays.fill(gates, ALWAYS);
        Arrays.fill(owners, -1);
        Arrays.fill(rcds, -1);
        int[] protective =
                new int[installation.nodeCount() + installation.meters().size()];
        int things = 0;
        ThingId last = null;
        for (Edge edge : installation.edges()) {
            int i = edge.index();
            from[i] = edge.from();
            to[i] = edge.to();
            gates[i] = gating.gate(edge);
            parts[i] = kind(edge.part());
            if (edge.conductor() == Conductor.PE && parts[i] == METAL) {
                protective[from[i]] = 1;
                protective[to[i]] = 1;
            }
            if (edge.part() != Part.FEED || !(edge.thing() instanceof Fed fed)) continue;
            if (!fed.id().equals(last)) {
                last = fed.id();
                things++;
            }
            if (fed.protection() != null && edge.conductor().isLine()) owners[i] = things - 1;
            if (fed.rcd() != null && edge.conductor() != Conductor.PE) rcds[i] = things - 1;
        }
        protective[installation.mainEarth()] = 1;
        int next = edges;
        int node = installation.nodeCount();
        for (Meter meter : installation.meters()) {
            int neutral = measuringNeutral(installation, meter);
            if (neutral >= 0) {
                from[next] = neutral;
                to[next++] = node;
            }
            node++;
        }
        Structure structure = new Structure(
                node,
                new Joints(from, to),
                new Marks(gates),
                new Marks(owners),
                new Marks(rcds),
                new Marks(parts),
                new Marks(protective),
                starts(installation),
                things);
        return new PowerNet(structure, structure.planned);
    }

    private static Starts starts(Installation installation) {
        int[][] grid = new int[4][];
        int[][] island = new int[4][];
        Conductor[] lines = {Conductor.L1, Conductor.L2, Conductor.L3};
        for (int line = 0; line < 3; line++) {
            Conductor conductor = lines[line];
            grid[line] = new int[] {installation.node(ThingId.SUPPLY, Terminals.OUTGOING, conductor)};
            island[line] = installation.formingInverters().stream()
                    .filter(inverter -> installation.lines(inverter.id()).contains(conductor))
                    .mapToInt(inverter -> installation.node(inverter.id(), Terminals.OUTGOING, conductor))
                    .toArray();
        }
        grid[3] = new int[] {installation.neutralTerminal(ThingId.SUPPLY)};
        island[3] = installation.formingInverters().stream()
                .map(Inverter::id)
                .mapToInt(installation::neutralTerminal)
                .toArray();
        return new Starts(grid, island, installation.mainEarth());
    }

    private static int kind(Part part) {
        return switch (part) {
            case LINK, LINK_SWITCH -> LINK;
            case SPLIT_EARTH -> SPLIT;
            case ELECTRODE, NETWORK_EARTH -> SOIL;
            case FEED, THROUGH, CONTACT, BY_PASS, SPLIT_NEUTRAL, BOND -> METAL;
        };
    }

    /** Node at which a meter's measuring neutral begins, or -1. */
    private static int measuringNeutral(Installation installation, Meter meter) {
        ThingId at = meter.measuringNeutralFrom();
        if (at == null || !at.equals(ThingId.SUPPLY) && installation.findFed(at).isEmpty()) return -1;
        int neutral = installation.node(at, Terminals.OUTGOING, Conductor.N);
        return installation.edgesAt(neutral).length > 0
                ? neutral
                : installation.node(at, Terminals.OUTGOING, Conductor.PEN);
    }

    /** The terminal of a meter for its measuring neutral, by the meter's place among the meters. */
    public static int measuringTerminal(Installation installation, int meter) {
        return installation.nodeCount() + meter;
    }

    /** The joints, which a mistake may change. */
    public Joints joints() {
        return structure.planned;
    }

    /** A net with a mistake. */
    public PowerNet with(Edit edit) {
        return edit.isNone() ? this : new PowerNet(structure, joints.with(edit));
    }

    /**
     * What reaches what.
     *
     * @param closed  gates that are closed, one bit each
     * @param live    potentials of sources that are there, lines and neutrals, one bit each
     * @param tripped overcurrent devices that have tripped, by the number of the thing
     */
    public Nets solve(long closed, int live, long[] tripped) {
        return new Nets(this, closed, live, tripped);
    }

    boolean conducts(int joint, long closed, long[] tripped) {
        if (joint >= structure.gates.of.length) return true;
        int gate = structure.gates.of[joint];
        if (gate != ALWAYS && (closed >>> gate & 1) == 0) return false;
        int owner = structure.owners.of[joint];
        return owner < 0 || (tripped[owner >> 6] >>> owner & 1) == 0;
    }

    int part(int joint) {
        return joint < structure.parts.of.length ? structure.parts.of[joint] : METAL;
    }

    int[] starts() {
        return starts;
    }

    int[] adjacent() {
        return adjacent;
    }

    int[] neighbours() {
        return neighbours;
    }

    boolean[] opens() {
        return opens;
    }

    int[] tiesToEarth() {
        return ties;
    }

    /** An empty set of tripped devices. */
    public long[] nothingTripped() {
        return new long[(structure.protectedThings >> 6) + 1];
    }

    int[][] starts(System system) {
        return system == System.GRID ? structure.starts.grid : structure.starts.island;
    }

    /** Number of the thing whose feed a joint is, as in {@code tripped}; -1 for none. */
    public int owner(int joint) {
        return joint < structure.owners.of.length ? structure.owners.of[joint] : -1;
    }
}
