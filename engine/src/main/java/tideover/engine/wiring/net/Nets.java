package tideover.engine.wiring.net;

import org.jspecify.annotations.Nullable;
import tideover.engine.wiring.net.Potential.System;

/** A power net with all contacts in one position: the potentials at each node and the way they came. */
public final class Nets {

    /** Reached by: not at all; by nothing, a source is here; by joint i, written i + 2. */
    private static final int UNREACHED = 0;

    private static final int START = 1;
    private static final int FIRST = 2;

    private final PowerNet net;
    private final long closed;
    private final long[] tripped;
    private final int[] mask;
    private final int[] byGrid;
    private final int[] byIsland;
    private final int[] byEarth;
    private int clashes;
    private int @Nullable [] roots;
    private int gridLinks = -1;
    private int islandLinks = -1;

    Nets(PowerNet net, long closed, int live, long[] tripped) {
        this.net = net;
        this.closed = closed;
        this.tripped = tripped.clone();
        int nodes = net.structure.nodes();
        mask = new int[nodes];
        byGrid = new int[nodes];
        byIsland = new int[nodes];
        byEarth = new int[nodes];
        int[] queue = new int[nodes];
        flood(System.GRID, live, byGrid, queue);
        flood(System.ISLAND, live, byIsland, queue);
        flood(new int[] {net.structure.starts().mainEarth}, Potential.EARTH, byEarth, queue);
        for (int joint : net.tiesToEarth()) {
            // A protective conductor that begins at a PEN further down is earthed over that.
            if (net.part(joint) != PowerNet.SPLIT) continue;
            int end = net.joints.to[joint];
            if ((mask[end] & Potential.EARTH) == 0 && (mask[net.joints.from[joint]] & Potential.NEUTRALS) != 0)
                flood(new int[] {end}, Potential.EARTH, byEarth, queue);
        }
    }

    private void flood(System system, int live, int[] by, int[] queue) {
        int[][] starts = net.starts(system);
        for (int conductor = 0; conductor < 4; conductor++) {
            int bit = system.bit(conductor);
            if ((live & bit) != 0) flood(starts[conductor], bit, by, queue);
        }
    }

    private void flood(int[] from, int bit, int[] by, int[] queue) {
        int tail = 0;
        for (int start : from) {
            if ((mask[start] & bit) != 0) continue;
            clashes |= clash(mask[start] |= bit);
            if (by[start] == UNREACHED) by[start] = START;
            queue[tail++] = start;
        }
        int[] starts = net.starts();
        int[] adjacent = net.adjacent();
        int[] neighbours = net.neighbours();
        boolean[] opens = net.opens();
        for (int head = 0; head < tail; head++) {
            int node = queue[head];
            for (int i = starts[node]; i < starts[node + 1]; i++) {
                int next = neighbours[i];
                int before = mask[next];
                if ((before & bit) != 0) continue;
                int joint = adjacent[i];
                if (opens[i] && !net.conducts(joint, closed, tripped)) continue;
                mask[next] = before | bit;
                if (before != 0) clashes |= clash(before | bit);
                if (by[next] == UNREACHED) by[next] = joint + FIRST;
                queue[tail++] = next;
            }
        }
    }

    /** What two potentials at one node mean. */
    public static final class Clash {
        /** Short-circuit fed by the grid, to neutral, another line or earth. */
        public static final int GRID = 1;
        /** The same, fed by the island's source. */
        public static final int ISLAND = 1 << 1;
        /** Both sources on one conductor. */
        public static final int PARALLEL = 1 << 2;

        private Clash() {}
    }

    private static int clash(int potentials) {
        int lines = potentials & Potential.LINES;
        if (lines == 0) return 0;
        int clash = 0;
        boolean onEarth = (potentials & Potential.EARTH) != 0;
        if (several(System.GRID.of(potentials)) || onEarth && (lines & Potential.GRID_LINES) != 0) clash |= Clash.GRID;
        if (several(System.ISLAND.of(potentials)) || onEarth && (lines & Potential.ISLAND_LINES) != 0)
            clash |= Clash.ISLAND;
        boolean mixed = (lines & Potential.GRID_LINES) != 0
                && (potentials & (Potential.ISLAND_LINES | Potential.ISLAND_N)) != 0;
        if (mixed || (lines & Potential.ISLAND_LINES) != 0 && (potentials & Potential.GRID_N) != 0)
            clash |= Clash.PARALLEL;
        return clash;
    }

    private static boolean several(int bits) {
        return (bits & bits - 1) != 0;
    }

    /** All clashes anywhere, bits of {@link Clash}. */
    public int clashes() {
        return clashes;
    }

    /** Potentials at a node, one bit each. */
    public int potentials(int node) {
        return mask[node];
    }

    /** Whether the same potentials are at some nodes as in another position of the contacts. */
    public boolean hasPotentialsOf(Nets other, int[] nodes) {
        for (int node : nodes) if (mask[node] != other.mask[node]) return false;
        return true;
    }

    /** Whether two nodes are joined by metal, links between neutral and earth counted. */
    public boolean isJoined(int nodeA, int nodeB) {
        int[] found = roots;
        if (found == null) roots = found = roots();
        return find(found, nodeA) == find(found, nodeB);
    }

    private int[] roots() {
        int[] found = new int[mask.length];
        for (int node = 0; node < found.length; node++) found[node] = node;
        for (int joint = 0; joint < net.joints.count(); joint++) {
            int from = net.joints.from[joint];
            int to = net.joints.to[joint];
            if (from < 0 || to < 0 || net.part(joint) == PowerNet.SOIL || !net.conducts(joint, closed, tripped))
                continue;
            int rootA = find(found, from);
            int rootB = find(found, to);
            if (rootA != rootB) found[rootA] = rootB;
        }
        return found;
    }

    private static int find(int[] roots, int node) {
        int at = node;
        while (roots[at] != at) {
            roots[at] = roots[roots[at]];
            at = roots[at];
        }
        return at;
    }

    /**
     * How many connections to earth a system's neutral has; the network's own counted, and with it the splits of its PEN.
     */
    public int links(System system) {
        int known = system == System.GRID ? gridLinks : islandLinks;
        if (known >= 0) return known;
        int links = countLinks(system);
        if (system == System.GRID) gridLinks = links;
        else islandLinks = links;
        return links;
    }

    private int countLinks(System system) {
        int neutral = system.neutral();
        boolean network = system == System.GRID || sharesNeutral();
        int links = network ? 1 : 0;
        boolean split = false;
        for (int joint : net.tiesToEarth()) {
            if (!net.conducts(joint, closed, tripped)) continue;
            int part = net.part(joint);
            if (part == PowerNet.LINK) {
                if (isLink(joint, neutral)) links++;
            } else if (part == PowerNet.SPLIT) {
                if ((mask[net.joints.from[joint]] & neutral) != 0) split = true;
            } else if (isStray(joint, system)) {
                links++;
            }
        }
        return split && !network ? links + 1 : links;
    }

    /** Whether a link really ties this neutral to earth: a mistake may have left one end elsewhere. */
    private boolean isLink(int joint, int neutral) {
        int from = mask[net.joints.from[joint]];
        int to = mask[net.joints.to[joint]];
        return (from & neutral) != 0 && (to & Potential.EARTH) != 0
                || (to & neutral) != 0 && (from & Potential.EARTH) != 0;
    }

    private boolean sharesNeutral() {
        int[] terminals = net.starts(System.ISLAND)[3];
        for (int terminal : terminals) if ((mask[terminal] & Potential.GRID_N) != 0) return true;
        return false;
    }

    /** Whether a joint ties a neutral to earth that is not meant to: each end is reached without it. */
    private boolean isStray(int joint, System system) {
        int from = net.joints.from[joint];
        int to = net.joints.to[joint];
        boolean fromIsProtective = net.structure.protective().of[from] != 0;
        if (fromIsProtective == (net.structure.protective().of[to] != 0)) return false;
        int protective = fromIsProtective ? from : to;
        int neutral = fromIsProtective ? to : from;
        int[] by = by(system);
        return (mask[neutral] & system.neutral()) != 0
                && by[neutral] != joint + FIRST
                && (mask[protective] & Potential.EARTH) != 0
                && byEarth[protective] != joint + FIRST;
    }

    private int[] by(System system) {
        return system == System.GRID ? byGrid : byIsland;
    }

    /** The overcurrent device next before a node on the way from a source, as a number of its thing; -1: none. */
    public int findProtection(int node, System system) {
        int[] by = by(system);
        if (by[node] == UNREACHED) return -1;
        int at = node;
        while (by[at] >= FIRST) {
            int joint = by[at] - FIRST;
            int owner = net.owner(joint);
            if (owner >= 0) return owner;
            at = net.joints.from[joint] == at ? net.joints.to[joint] : net.joints.from[joint];
        }
        return -1;
    }

    /**
     * Whether a residual current device trips when a load between two nodes draws current: one that the current passes on
     * its way there and not back, or behind which the neutral is tied to earth.
     */
    public boolean tripsUnderLoad(int line, int neutral, System system) {
        int[] by = by(system);
        if (by[line] == UNREACHED) return false;
        boolean returns = (mask[neutral] & system.neutral()) != 0;
        for (int at = line; by[at] >= FIRST; at = before(by, at)) {
            int rcd = rcd(by[at] - FIRST);
            if (rcd >= 0 && (!returns || !passes(rcd, neutral, by) || isShunted(rcd, system))) return true;
        }
        if (!returns) return false;
        for (int at = neutral; by[at] >= FIRST; at = before(by, at)) {
            int rcd = rcd(by[at] - FIRST);
            if (rcd >= 0 && !passes(rcd, line, by)) return true;
        }
        return false;
    }

    /** Whether any residual current device lies on the way of a line. */
    public boolean hasRcd(int line, System system) {
        int[] by = by(system);
        if (by[line] == UNREACHED) return false;
        for (int at = line; by[at] >= FIRST; at = before(by, at)) if (rcd(by[at] - FIRST) >= 0) return true;
        return false;
    }

    private boolean passes(int rcd, int node, int[] by) {
        for (int at = node; by[at] >= FIRST; at = before(by, at)) if (rcd(by[at] - FIRST) == rcd) return true;
        return false;
    }

    private boolean isShunted(int rcd, System system) {
        int[] by = by(system);
        for (int joint : net.tiesToEarth()) {
            if (!net.conducts(joint, closed, tripped)) continue;
            int part = net.part(joint);
            int from = net.joints.from[joint];
            int to = net.joints.to[joint];
            int neutral = (mask[from] & system.neutral()) != 0 ? from : to;
            if ((mask[neutral] & system.neutral()) == 0) continue;
            if (part == PowerNet.LINK && !isLink(joint, system.neutral())) continue;
            if (part == PowerNet.METAL) {
                if (!isStray(joint, system)) continue;
                neutral = net.structure.protective().of[from] != 0 ? to : from;
            }
            if (passes(rcd, neutral, by)) return true;
        }
        return false;
    }

    private int rcd(int joint) {
        return joint < net.structure.rcds().of.length ? net.structure.rcds().of[joint] : -1;
    }

    private int before(int[] by, int node) {
        int joint = by[node] - FIRST;
        return net.joints.from[joint] == node ? net.joints.to[joint] : net.joints.from[joint];
    }
}
