package tideover.engine.network.flow;

import java.util.Arrays;

/**
 * Which points are one, because branches without impedance join them. Each group of joined points has a leader; a point's
 * voltage is that of its leader and the e.m.f. of the ideal sources between them.
 */
final class Joints {

    /** Group of each point; group 0 holds earth. */
    final int[] group;

    final int groupCount;
    final double[] offsetR;
    final double[] offsetX;

    /** For each joining branch the point on its outer side, away from the leader; -1 for all others. */
    final int[] outer;

    /** All branches at each point, one point after the other; those of point p begin at {@code start[p]}. */
    final int[] at;

    final int[] start;

    /** Branches without impedance between points that are one already, such as a by-pass over closed contacts. */
    final boolean[] idle;

    Joints(FourWireNetwork network) {
        int points = network.pointCount;
        int branches = network.from.length;
        start = new int[points + 1];
        boolean[] joins = new boolean[branches];
        for (int b = 0; b < branches; b++) {
            joins[b] = network.joins(b);
            start[network.from[b] + 1]++;
            start[network.to[b] + 1]++;
        }
        for (int p = 0; p < points; p++) start[p + 1] += start[p];
        at = new int[start[points]];
        int[] fill = Arrays.copyOf(start, points);
        for (int b = 0; b < branches; b++) {
            at[fill[network.from[b]]++] = b;
            at[fill[network.to[b]]++] = b;
        }
        group = new int[points];
        Arrays.fill(group, -1);
        offsetR = new double[points];
        offsetX = new double[points];
        int[] queue = new int[points];
        outer = new int[branches];
        Arrays.fill(outer, -1);
        int head = 0;
        int tail = 0;
        int groups = 0;
        for (int leader = 0; leader < points; leader++) {
            if (group[leader] >= 0) continue;
            group[leader] = groups;
            queue[tail++] = leader;
            while (head < tail) {
                int point = queue[head++];
                for (int k = start[point]; k < start[point + 1]; k++) {
                    int b = at[k];
                    if (!joins[b]) continue;
                    boolean outward = network.from[b] == point;
                    int next = outward ? network.to[b] : network.from[b];
                    if (group[next] >= 0) continue;
                    group[next] = groups;
                    double sign = outward ? 1 : -1;
                    offsetR[next] = offsetR[point] + sign * network.emfR[b];
                    offsetX[next] = offsetX[point] + sign * network.emfX[b];
                    outer[b] = next;
                    queue[tail++] = next;
                }
            }
            groups++;
        }
        groupCount = groups;
        for (int b = 0; b < branches; b++) joins[b] &= outer[b] < 0;
        idle = joins;
    }
}
