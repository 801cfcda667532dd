package tideover.engine.network.flow;

import java.util.Arrays;

/** Finds the branches that close loops, and the parts no branch connects to earth. */
final class SpanningTree {

    private final FourWireNetwork network;
    private final Joints joints;

    SpanningTree(FourWireNetwork network, Joints joints) {
        this.network = network;
        this.joints = joints;
    }

    /**
     * Branches that close a loop. Coupled ones are never taken out of their cable.
     *
     * @param insulatedRatio is told for each group of a part that no branch connects to earth its share of that part
     */
    boolean[] closing(double[] insulatedRatio) {
        int groups = joints.groupCount;
        int branches = network.from.length;
        int[] start = new int[groups + 1];
        for (int b = 0; b < branches; b++) {
            if (network.joins(b)) continue;
            start[joints.group[network.from[b]] + 1]++;
            start[joints.group[network.to[b]] + 1]++;
        }
        for (int g = 0; g < groups; g++) start[g + 1] += start[g];
        int[] at = new int[start[groups]];
        int[] fill = Arrays.copyOf(start, groups);
        for (int b = 0; b < branches; b++) {
            if (network.joins(b)) continue;
            at[fill[joints.group[network.from[b]]]++] = b;
            at[fill[joints.group[network.to[b]]]++] = b;
        }
        boolean[] tree = new boolean[branches];
        boolean[] seen = new boolean[groups];
        int[] queue = new int[groups];
        int head = 0;
        int tail = 0;
        for (int root = 0; root < groups; root++) {
            if (seen[root]) continue;
            seen[root] = true;
            int first = tail;
            queue[tail++] = root;
            while (head < tail) {
                int group = queue[head++];
                for (int k = start[group]; k < start[group + 1]; k++) {
                    int b = at[k];
                    int one = joints.group[network.from[b]];
                    int next = one == group ? joints.group[network.to[b]] : one;
                    if (seen[next]) continue;
                    seen[next] = true;
                    tree[b] = true;
                    queue[tail++] = next;
                }
            }
            // All groups alike, so that the order of the points makes no difference.
            for (int i = first; root != 0 && i < tail; i++) insulatedRatio[queue[i]] = 1.0 / (tail - first);
        }
        boolean[] closing = new boolean[branches];
        for (int b = 0; b < branches; b++)
            closing[b] = !tree[b]
                    && !network.joins(b)
                    && !network.isCoupled(b)
                    && joints.group[network.from[b]] != joints.group[network.to[b]];
        return closing;
    }
}
