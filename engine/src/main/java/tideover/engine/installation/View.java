package tideover.engine.installation;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge.Part;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.OperatingState;
import tideover.engine.site.RestPosition;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** The installation in one operating state. */
public final class View {

    private static final int UNREACHED = -2;
    private static final int START = -1;

    private final Installation installation;
    private final OperatingState state;
    private final boolean[] closed;
    private final List<ThingId> sources;
    private final Map<ThingId, int[]> lineReach = new HashMap<>();
    private final Map<ThingId, int[]> neutralReach = new HashMap<>();
    private final Map<ThingId, Map<Integer, Path>> paths = new HashMap<>();
    private final Map<ThingId, Map<ThingId, Boolean>> joinedBehind = new HashMap<>();
    private @Nullable NeutralSearch neutrals;

    View(Installation installation, OperatingState state) {
        this.installation = installation;
        this.state = state;
        List<Edge> edges = installation.edges();
        closed = new boolean[edges.size()];
        for (int i = 0; i < closed.length; i++) closed[i] = isClosed(edges.get(i), state);
        sources = liveSources();
        for (ThingId source : sources) {
            lineReach.put(source, reach(lineTerminals(source), Edge::carriesLine));
            neutralReach.put(source, reach(new int[] {installation.neutralTerminal(source)}, Edge::carriesNeutral));
        }
    }

    private static boolean isClosed(Edge edge, OperatingState state) {
        return switch (edge.part()) {
            case CONTACT ->
                switch (state) {
                    case CONNECTED -> true;
                    case ISLAND_GRID_DEAD, ISLAND_GRID_WAITING -> false;
                    case DARK, BY_PASSED -> ((IslandingSwitch) edge.thing()).restPosition() == RestPosition.CLOSED;
                };
            case LINK_SWITCH ->
                switch (state) {
                    case CONNECTED -> false;
                    case ISLAND_GRID_DEAD, ISLAND_GRID_WAITING -> true;
                    case DARK, BY_PASSED -> ((NeutralEarthSwitch) edge.thing()).restPosition() == RestPosition.CLOSED;
                };
            case BY_PASS -> state == OperatingState.BY_PASSED;
            case FEED, THROUGH, SPLIT_NEUTRAL, SPLIT_EARTH, LINK, BOND, ELECTRODE, NETWORK_EARTH -> true;
        };
    }

    private List<ThingId> liveSources() {
        List<ThingId> live = new ArrayList<>();
        if (state.isGridLive()) live.add(ThingId.SUPPLY);
        if (state.isIsland()) for (Inverter inverter : installation.formingInverters()) live.add(inverter.id());
        return List.copyOf(live);
    }

    private int[] lineTerminals(ThingId source) {
        return new int[] {
            installation.node(source, Terminals.OUTGOING, Conductor.L1),
            installation.node(source, Terminals.OUTGOING, Conductor.L2),
            installation.node(source, Terminals.OUTGOING, Conductor.L3)
        };
    }

    /** Breadth first over closed edges; for each node the edge it was reached by, START or UNREACHED. */
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

    /** The state shown. */
    public OperatingState state() {
        return state;
    }

    /** Sources that form a voltage in this state: the grid as {@code supply}, and island sources. */
    public List<ThingId> sources() {
        return sources;
    }

    /** Whether an edge conducts in this state. */
    public boolean isClosed(Edge edge) {
        return closed[edge.index()];
    }

    /** Sources whose voltage reaches a line at a thing's outgoing terminals; two or more are paralleled. */
    public List<ThingId> sourcesAt(ThingId thing, Conductor line) {
        int node = installation.node(thing, Terminals.OUTGOING, line);
        List<ThingId> at = new ArrayList<>(1);
        for (ThingId source : sources) if (requireNonNull(lineReach.get(source))[node] != UNREACHED) at.add(source);
        return at;
    }

    /** Whether all lines of a thing have voltage. A thing that states no line has none. */
    public boolean isFed(Fed thing) {
        boolean any = false;
        for (Conductor line : lines(thing)) {
            if (sourcesAt(thing.id(), line).isEmpty()) return false;
            any = true;
        }
        return any;
    }

    /** The source that feeds a thing's first live line. */
    public Optional<ThingId> findSource(Fed thing) {
        for (Conductor line : lines(thing)) {
            List<ThingId> at = sourcesAt(thing.id(), line);
            if (!at.isEmpty()) return Optional.of(at.get(0));
        }
        return Optional.empty();
    }

    /** The lines of a thing that have voltage. */
    public List<Conductor> liveLines(Fed thing) {
        List<Conductor> live = new ArrayList<>(3);
        for (Conductor line : lines(thing)) if (!sourcesAt(thing.id(), line).isEmpty()) live.add(line);
        return live;
    }

    /** The line conductors at a thing, stated or taken from what feeds it. */
    public List<Conductor> lines(Fed thing) {
        return installation.lines(thing.id());
    }

    /** The way of a line from a source to a thing's outgoing terminals. */
    public Optional<Path> findLinePath(ThingId source, ThingId thing, Conductor line) {
        return findPath(lineReach, source, installation.node(thing, Terminals.OUTGOING, line));
    }

    /** The way of the neutral from a source to a thing's outgoing terminals, over neutral conductors only. */
    public Optional<Path> findNeutralPath(ThingId source, ThingId thing) {
        for (Conductor neutral : new Conductor[] {Conductor.N, Conductor.PEN}) {
            int node = installation.node(thing, Terminals.OUTGOING, neutral);
            if (installation.edgesAt(node).length == 0) continue;
            Optional<Path> path = findPath(neutralReach, source, node);
            if (path.isPresent()) return path;
        }
        return Optional.empty();
    }

    private Optional<Path> findPath(Map<ThingId, int[]> reach, ThingId source, int node) {
        int[] by = reach.get(source);
        if (by == null || by[node] == UNREACHED) return Optional.empty();
        // A node is reached from a source by lines or by neutrals, never by both.
        return Optional.of(paths.computeIfAbsent(source, s -> new HashMap<>())
                .computeIfAbsent(node, end -> trace(source, by, end)));
    }

    private Path trace(ThingId source, int[] by, int end) {
        int length = 0;
        for (int at = end; by[at] != START; at = installation.edges().get(by[at]).other(at)) length++;
        Edge[] edges = new Edge[length];
        int at = end;
        while (by[at] != START) {
            Edge edge = installation.edges().get(by[at]);
            edges[--length] = edge;
            at = edge.other(at);
        }
        return new Path(source, List.of(edges));
    }

    /** The separate neutrals in this state that a source or a circuit belongs to. */
    public List<NeutralGroup> neutralGroups() {
        return neutrals().groups();
    }

    /** The separate neutral that a thing's neutral belongs to, if it has one. */
    public Optional<NeutralGroup> findNeutralGroup(ThingId thing) {
        return neutrals().findGroup(thing);
    }

    private NeutralSearch neutrals() {
        NeutralSearch found = neutrals;
        if (found == null) neutrals = found = new NeutralSearch(installation, this);
        return found;
    }

    /** Whether a source's neutral is connected to earth in this state: without that no RCD sees a fault. */
    public boolean isEarthed(ThingId source) {
        return findNeutralGroup(source).map(group -> !group.earthed().isEmpty()).orElse(false);
    }

    /**
     * Whether the neutral behind a residual current device is joined to a source or to earth there, past the device: by a
     * link or split behind it, or because the source itself lies behind it. Then it trips in service, or a fault returns
     * through it and it sees nothing.
     */
    public boolean isByPassedByNeutral(ThingId rcd, ThingId source) {
        return joinedBehind
                .computeIfAbsent(source, s -> new HashMap<>())
                .computeIfAbsent(rcd, r -> isJoinedBehind(r, source));
    }

    private boolean isJoinedBehind(ThingId rcd, ThingId source) {
        for (Conductor neutral : new Conductor[] {Conductor.N, Conductor.PEN}) {
            int start = installation.node(rcd, Terminals.INCOMING, neutral);
            if (installation.edgesAt(start).length == 0) continue;
            int[] by = reach(
                    new int[] {start},
                    edge -> edge.carriesNeutral()
                            && !(edge.part() == Part.FEED && edge.thing().id().equals(rcd)));
            if (by[installation.neutralTerminal(source)] != UNREACHED) return true;
            for (Edge edge : installation.edges())
                if (edge.earthsNeutral() && closed[edge.index()] && by[edge.from()] != UNREACHED) return true;
        }
        return false;
    }

    /** Links that are closed in this state. */
    public List<Thing> closedLinks() {
        List<Thing> links = new ArrayList<>();
        for (Edge edge : installation.edges())
            if (closed[edge.index()] && (edge.part() == Part.LINK || edge.part() == Part.LINK_SWITCH))
                links.add(edge.thing());
        return links;
    }
}
