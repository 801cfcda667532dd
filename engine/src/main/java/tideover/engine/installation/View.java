package tideover.engine.installation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.OperatingState;
import tideover.engine.site.RestPosition;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;

/** The installation in one operating state. */
public final class View {

    private final Installation installation;
    private final OperatingState state;
    private final Reach reach;
    private final List<ThingId> sources;
    private final Map<ThingId, Feed> feeds = new HashMap<>();
    private @Nullable NeutralSearch neutrals;

    View(Installation installation, OperatingState state, Reach reach) {
        this.installation = installation;
        this.state = state;
        this.reach = reach;
        this.sources = liveSources();
    }

    /** Whether each edge conducts in a state, by its index. */
    static boolean[] closed(Installation installation, OperatingState state) {
        boolean[] closed = new boolean[installation.edges().size()];
        for (Edge edge : installation.edges()) closed[edge.index()] = isClosed(edge, state);
        return closed;
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

    /** The state shown. */
    public OperatingState state() {
        return state;
    }

    /** Sources that form a voltage in this state: the grid as {@code supply}, and island sources. */
    public List<ThingId> sources() {
        return sources;
    }

    /** Whether another state puts all contacts in the same position, so that only sources may differ. */
    public boolean hasContactsOf(View other) {
        return reach == other.reach;
    }

    /** Whether an edge conducts in this state. */
    public boolean isClosed(Edge edge) {
        return reach.isClosed(edge.index());
    }

    /** Sources whose voltage reaches a line at a thing's outgoing terminals; two or more are paralleled. */
    public List<ThingId> sourcesAt(ThingId thing, Conductor line) {
        int node = installation.node(thing, Terminals.OUTGOING, line);
        List<ThingId> at = List.of();
        for (ThingId source : sources) {
            if (!reach.reachesLine(source, node)) continue;
            // Nearly always there is one.
            if (at.isEmpty()) {
                at = List.of(source);
            } else {
                at = new ArrayList<>(at);
                at.add(source);
            }
        }
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
        return feed(thing).source();
    }

    /** The lines of a thing that have voltage. */
    public List<Conductor> liveLines(Fed thing) {
        return feed(thing).liveLines();
    }

    /** What feeds a thing: its lines that have voltage, and the source of the first. */
    private record Feed(List<Conductor> liveLines, Optional<ThingId> source) {}

    private Feed feed(Fed thing) {
        Feed known = feeds.get(thing.id());
        if (known != null) return known;
        List<Conductor> live = new ArrayList<>(3);
        ThingId source = null;
        for (Conductor line : lines(thing)) {
            List<ThingId> at = sourcesAt(thing.id(), line);
            if (at.isEmpty()) continue;
            live.add(line);
            if (source == null) source = at.get(0);
        }
        Feed feed = new Feed(List.copyOf(live), Optional.ofNullable(source));
        feeds.put(thing.id(), feed);
        return feed;
    }

    /** The line conductors at a thing, stated or taken from what feeds it. */
    public List<Conductor> lines(Fed thing) {
        return installation.lines(thing.id());
    }

    /** The way of a line from a source to a thing's outgoing terminals. */
    public Optional<Path> findLinePath(ThingId source, ThingId thing, Conductor line) {
        return reach.findLinePath(source, installation.node(thing, Terminals.OUTGOING, line));
    }

    /** The way of the neutral from a source to a thing's outgoing terminals, over neutral conductors only. */
    public Optional<Path> findNeutralPath(ThingId source, ThingId thing) {
        for (Conductor neutral : new Conductor[] {Conductor.N, Conductor.PEN}) {
            int node = installation.node(thing, Terminals.OUTGOING, neutral);
            if (installation.edgesAt(node).length == 0) continue;
            Optional<Path> path = reach.findNeutralPath(source, node);
            if (path.isPresent()) return path;
        }
        return Optional.empty();
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
        return reach.isJoinedBehind(rcd, source);
    }
}
