package tideover.engine.wiring.net;

import java.util.ArrayList;
import java.util.List;

/**
 * Control wiring: nodes joined by cores for good and by contacts while these are closed, and rails that give some nodes a
 * potential. A potential is one bit; a net bears those of all rails joined to it.
 */
public final class SwitchingNet {

    private final int nodes;
    private final Joints cores;
    private final Joints contacts;
    private final int[] gates;
    private final int[] railNodes;
    private final int[] railBits;

    private SwitchingNet(int nodes, Joints cores, Joints contacts, int[] gates, int[] railNodes, int[] railBits) {
        this.nodes = nodes;
        this.cores = cores;
        this.contacts = contacts;
        this.gates = gates;
        this.railNodes = railNodes;
        this.railBits = railBits;
    }

    /** Puts a net together. */
    public static final class Builder {
        private int nodes;
        private final List<int[]> cores = new ArrayList<>();
        private final List<int[]> contacts = new ArrayList<>();
        private final List<int[]> rails = new ArrayList<>();

        /** A further node; nodes are numbered from 0. */
        public int node() {
            return nodes++;
        }

        /** A core; joints are numbered from 0. */
        public int core(int nodeA, int nodeB) {
            cores.add(new int[] {nodeA, nodeB});
            return cores.size() - 1;
        }

        /** A contact that is closed while bit {@code gate} of the gates is set. */
        public void contact(int nodeA, int nodeB, int gate) {
            contacts.add(new int[] {nodeA, nodeB, gate});
        }

        /** A node that has a potential while that bit of the live potentials is set. */
        public void rail(int node, int bit) {
            rails.add(new int[] {node, bit});
        }

        public SwitchingNet build() {
            return new SwitchingNet(
                    nodes,
                    new Joints(column(cores, 0), column(cores, 1)),
                    new Joints(column(contacts, 0), column(contacts, 1)),
                    column(contacts, 2),
                    column(rails, 0),
                    column(rails, 1));
        }

        private static int[] column(List<int[]> rows, int column) {
            return rows.stream().mapToInt(row -> row[column]).toArray();
        }
    }

    /** The cores, which a mistake may change. */
    public Joints cores() {
        return cores;
    }

    /** A net with a mistake in its cores. */
    public SwitchingNet with(Edit edit) {
        return edit.isNone() ? this : new SwitchingNet(nodes, cores.with(edit), contacts, gates, railNodes, railBits);
    }

    /** A buffer for {@link #solve}. */
    public Solved solved() {
        return new Solved(nodes);
    }

    /**
     * Joins what is joined.
     *
     * @param closed gates that are closed, one bit each
     * @param live   potentials that are there, one bit each
     * @param into   takes the result
     */
    public void solve(long closed, int live, Solved into) {
        int[] root = into.root;
        for (int node = 0; node < nodes; node++) root[node] = node;
        for (int i = 0; i < cores.from.length; i++) into.join(cores.from[i], cores.to[i]);
        for (int i = 0; i < gates.length; i++)
            if ((closed >>> gates[i] & 1) != 0) into.join(contacts.from[i], contacts.to[i]);
        for (int node = 0; node < nodes; node++) into.mask[node] = 0;
        for (int i = 0; i < railNodes.length; i++)
            if ((live >>> railBits[i] & 1) != 0) into.mask[into.find(railNodes[i])] |= 1 << railBits[i];
    }

    /** What is joined to what; overwritten by the next solution. */
    public static final class Solved {
        private final int[] root;
        private final int[] mask;

        private Solved(int nodes) {
            root = new int[nodes];
            mask = new int[nodes];
        }

        private void join(int a, int b) {
            if (a == Joints.NONE || b == Joints.NONE) return;
            int rootA = find(a);
            int rootB = find(b);
            if (rootA != rootB) root[rootA] = rootB;
        }

        private int find(int node) {
            int at = node;
            while (root[at] != at) {
                root[at] = root[root[at]];
                at = root[at];
            }
            return at;
        }

        /** Potentials at a node, one bit each. */
        public int potentials(int node) {
            return mask[find(node)];
        }

        /** Whether two nodes are joined. */
        public boolean isJoined(int nodeA, int nodeB) {
            return find(nodeA) == find(nodeB);
        }
    }
}
