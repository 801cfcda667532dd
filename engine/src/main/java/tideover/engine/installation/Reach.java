package tideover.engine.installation;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Conductor;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;

/**
 * What is reached from where with all contacts in one position. States that put the contacts in the same position share
 * it: island with the grid dead and with the grid waiting differ in their sources only.
 */
final class Reach {

    private static final int UNREACHED = -2;
    private static final int START = -1;

    private final Installation installation;
    private final boolean[] closed;
    private final Map<ThingId, From> froms = new HashMap<>();
    private final Map<ThingId, Map<ThingId, Boolean>> joinedBehind = new HashMap<>();

    /** What one source reaches: for each node the edge it is reached by, START or UNREACHED; and paths asked for. */
    private static final class From {
        private final int[] lines;
        private final int[] neutrals;
        private final @Nullable Path[] paths;

        From(int[] lines, int[] neutrals) {
            this.lines = lines;
            this.neutrals = neutrals;
            this.paths = new Path[lines.length];
        }
    }

    /** @param closed whether each edge conducts, by its index */
    Reach(Installation installation, boolean[] closed) {
        this.installation = installation;
        this.closed = closed;
    }

    boolean isClosed(int edge) {
        return closed[edge];
    }

    /** Whether contacts stand as in another list. */
    boolean isFor(boolean[] others) {
        return Arrays.equals(closed, others);
    }

    boolean reachesLine(ThingId source, int node) {
        return from(source).lines[node] != UNREACHED;
    }

    Optional<Path> findLinePath(ThingId source, int node) {
        From from = from(source);
        return findPath(source, from, from.lines, node);
    }

    Optional<Path> findNeutralPath(ThingId source, int node) {
        From from = from(source);
        return findPath(source, from, from.neutrals, node);
    }

    private From from(ThingId source) {
        From known = froms.get(source);
        if (known != null) return known;
        int[] lines = {
            installation.node(source, Terminals.OUTGOING, Conductor.L1),
            installation.node(source, Terminals.OUTGOING, Conductor.L2),
            installation.node(source, Terminals.OUTGOING, Conductor.L3)
        };
        From from = new From(
                reach(lines, Edge::carriesLine),
                reach(new int[] {installation.neutralTerminal(source)}, Edge::carriesNeutral));
        froms.put(source, from);
        return from;
    }

    /** Breadth first over closed edges. */
    private int[] reach(int[] starts, Predicate<Edge> passable) {
        int[] by = new int[installation.nodeCount()];
        Arrays.fill(by, UNREACHED);
        int[] queue = new int[by.length];
        int head = 0;
        int tail = 0;
        for (int start : starts) {
            by[start] = START;
            queue[tail++] = start;
        }
        while (head < tail) {
            int node = queue[head++];
            for (int index : installation.edgesAt(node)) {
                Edge edge = installation.edges().get(index);
                if (!closed[index] || !passable.test(edge)) continue;
                int next = edge.other(node);
                if (by[next] != UNREACHED) continue;
                by[next] = index;
                queue[tail++] = next;
            }
        }
        return by;
    }

    private Optional<Path> findPath(ThingId source, From from, int[] by, int node) {
        if (by[node] == UNREACHED) return Optional.empty();
        // A node is reached from a source by lines or by neutrals, never by both.
        Path path = from.paths[node];
        if (path == null) from.paths[node] = path = trace(source, by, node);
        return Optional.of(path);
    }

    private Path trace(ThingId source, int[] by, int end) {
        int length = 0;
        for (int at = end;
                by[at] != START;
                at = installation.edges().get(by[at]).other(at)) length++;
        Edge[] edges = new Edge[length];
        int at = end;
        while (by[at] != START) {
            Edge edge = installation.edges().get(by[at]);
            edges[--length] = edge;
            at = edge.other(at);
        }
        return new Path(source, List.of(edges));
    }

    /** See {@link View#isByPassedByNeutral}. */
    boolean isJoinedBehind(ThingId rcd, ThingId source) {
        return joinedBehind
                .computeIfAbsent(source, s -> new HashMap<>())
                .computeIfAbsent(rcd, r -> findsJoint(r, source));
    }

    private boolean findsJoint(ThingId rcd, ThingId source) {
        for (Conductor neutral : new Conductor[] {Conductor.N, Conductor.PEN}) {
            int start = installation.node(rcd, Terminals.INCOMING, neutral);
            if (installation.edgesAt(start).length == 0) continue;
            int[] by = reach(
                    new int[] {start},
                    edge -> edge.carriesNeutral()
                            && !(edge.part() == Edge.Part.FEED
                                    && edge.thing().id().equals(rcd)));
            if (by[installation.neutralTerminal(source)] != UNREACHED) return true;
            for (Edge edge : installation.edges())
                if (edge.earthsNeutral() && closed[edge.index()] && by[edge.from()] != UNREACHED) return true;
        }
        return false;
    }
}
