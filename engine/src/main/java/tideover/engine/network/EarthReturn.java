package tideover.engine.network;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.installation.Path;
import tideover.engine.installation.View;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;

/**
 * The ways fault current can take back to a source's neutral in one state: protective conductors, neutrals, closed
 * links and earth. Of several the one of least impedance is taken, as the simple method of one path does.
 */
public final class EarthReturn {

    private static final int NONE = -1;

    private final Installation installation;
    private final ThingId source;
    private final double[] ohm;
    private final int[] by;
    private final @Nullable Path[] paths;

    public EarthReturn(Installation installation, View view, Impedances impedances, ThingId source) {
        this.installation = installation;
        this.source = source;
        int nodes = installation.nodeCount();
        ohm = new double[nodes];
        by = new int[nodes];
        paths = new Path[nodes];
        Arrays.fill(ohm, Double.POSITIVE_INFINITY);
        Arrays.fill(by, NONE);
        int[] queue = new int[nodes + 1];
        boolean[] queued = new boolean[nodes];
        int head = 0;
        int tail = 0;
        int start = installation.neutralTerminal(source);
        ohm[start] = 0;
        queue[tail++] = start;
        while (head != tail) {
            int node = queue[head];
            head = (head + 1) % queue.length;
            queued[node] = false;
            for (int index : installation.edgesAt(node)) {
                Edge edge = installation.edges().get(index);
                if (edge.carriesLine() || !view.isClosed(edge)) continue;
                int next = edge.other(node);
                double total = ohm[node] + impedances.ohm(edge);
                if (total >= ohm[next]) continue;
                ohm[next] = total;
                by[next] = index;
                if (queued[next]) continue;
                queued[next] = true;
                queue[tail] = next;
                tail = (tail + 1) % queue.length;
            }
        }
    }

    /** The way back from the protective conductor of a thing, if there is one. */
    public Optional<Path> find(Fed thing) {
        for (Conductor conductor : new Conductor[] {Conductor.PE, Conductor.PEN}) {
            int node = installation.node(thing.id(), Terminals.OUTGOING, conductor);
            if (installation.edgesAt(node).length == 0 || ohm[node] == Double.POSITIVE_INFINITY) continue;
            Path path = paths[node];
            if (path == null) paths[node] = path = trace(node);
            return Optional.of(path);
        }
        return Optional.empty();
    }

    private Path trace(int end) {
        int length = 0;
        for (int at = end; by[at] != NONE; at = installation.edges().get(by[at]).other(at)) length++;
        Edge[] edges = new Edge[length];
        int at = end;
        while (by[at] != NONE) {
            Edge edge = installation.edges().get(by[at]);
            edges[--length] = edge;
            at = edge.other(at);
        }
        return new Path(source, List.of(edges));
    }
}
