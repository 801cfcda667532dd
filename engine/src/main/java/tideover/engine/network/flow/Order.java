package tideover.engine.network.flow;

import java.util.Arrays;

/**
 * Finds the order of elimination: always the unknown with the fewest neighbours left, so leaves first; unknown currents of
 * loops come last whatever their neighbours.
 */
final class Order {

    private final int points;
    private final int size;
    private final int words;
    private final long[] neighbours;

    Order(int points, int loops) {
        this.points = points;
        size = points + loops;
        words = (size + 63) >> 6;
        neighbours = new long[size * words];
    }

    /** Two unknowns stand in one equation; -1 is earth, which is known. */
    void connect(int one, int two) {
        if (one < 0 || two < 0 || one == two) return;
        neighbours[one * words + (two >> 6)] |= 1L << two;
        neighbours[two * words + (one >> 6)] |= 1L << one;
    }

    private int degree(int unknown) {
        int degree = 0;
        for (int w = unknown * words; w < (unknown + 1) * words; w++) degree += Long.bitCount(neighbours[w]);
        return degree;
    }

    Elimination eliminate() {
        int[] order = new int[size];
        int[] next = new int[points];
        int[] previous = new int[points];
        int[] degree = new int[points];
        int[] first = new int[size + 1];
        Arrays.fill(first, -1);
        for (int u = points - 1; u >= 0; u--) {
            degree[u] = degree(u);
            link(u, degree[u], first, next, previous);
        }
        int least = 0;
        for (int k = 0; k < points; k++) {
            while (first[least] < 0) least++;
            int u = first[least];
            unlink(u, least, first, next, previous);
            order[k] = u;
            least = Math.max(0, least - 1);
            spread(u, first, next, previous, degree);
        }
        for (int k = points; k < size; k++) {
            order[k] = k;
            spread(k, first, next, previous, degree);
        }
        return new Elimination(order, neighbours, words);
    }

    /** Eliminating an unknown makes all its neighbours neighbours of each other. Its own set stays: it is its column. */
    private void spread(int u, int[] first, int[] next, int[] previous, int[] degree) {
        int base = u * words;
        for (int w = 0; w < words; w++) {
            long bits = neighbours[base + w];
            while (bits != 0) {
                int v = (w << 6) + Long.numberOfTrailingZeros(bits);
                bits &= bits - 1;
                int row = v * words;
                for (int x = 0; x < words; x++) neighbours[row + x] |= neighbours[base + x];
                neighbours[row + (v >> 6)] &= ~(1L << v);
                neighbours[row + (u >> 6)] &= ~(1L << u);
                if (v >= points) continue;
                int changed = degree(v);
                if (changed == degree[v]) continue;
                unlink(v, degree[v], first, next, previous);
                degree[v] = changed;
                link(v, changed, first, next, previous);
            }
        }
    }

    private static void link(int u, int degree, int[] first, int[] next, int[] previous) {
        next[u] = first[degree];
        previous[u] = -1;
        if (first[degree] >= 0) previous[first[degree]] = u;
        first[degree] = u;
    }

    private static void unlink(int u, int degree, int[] first, int[] next, int[] previous) {
        if (previous[u] >= 0) next[previous[u]] = next[u];
        else first[degree] = next[u];
        if (next[u] >= 0) previous[next[u]] = previous[u];
    }
}
