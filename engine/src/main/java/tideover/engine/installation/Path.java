package tideover.engine.installation;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.site.Fed;
import tideover.engine.site.ThingId;

/**
 * A way of current through the netlist.
 *
 * @param source where it begins
 * @param edges  from the source to its end
 */
public record Path(ThingId source, List<Edge> edges) {
    public Path {
        edges = List.copyOf(edges);
    }

    /** The things whose supply cable, with its devices, lies on the way, from the source on. */
    public List<Fed> feeds() {
        List<Fed> feeds = new ArrayList<>();
        for (Edge edge : edges) if (edge.part() == Edge.Part.FEED && edge.thing() instanceof Fed fed) feeds.add(fed);
        return feeds;
    }

    /** The things on the way that hold a residual current device, from the source on. */
    public List<Fed> rcds() {
        List<Fed> rcds = new ArrayList<>();
        for (Edge edge : edges)
            if (edge.part() == Edge.Part.FEED && edge.thing() instanceof Fed fed && fed.rcd() != null) rcds.add(fed);
        return rcds;
    }

    /** Whether the supply cable of a thing lies on the way. */
    public boolean passes(ThingId thing) {
        for (Edge edge : edges)
            if (edge.part() == Edge.Part.FEED && edge.thing().id().equals(thing)) return true;
        return false;
    }

    /** Whether another way, of another line perhaps, leads through the same things. */
    public boolean runsLike(Path other) {
        if (edges.size() != other.edges.size()) return false;
        for (int i = 0; i < edges.size(); i++) {
            Edge one = edges.get(i);
            Edge two = other.edges.get(i);
            if (one.part() != two.part() || !one.thing().id().equals(two.thing().id())) return false;
        }
        return true;
    }
}
