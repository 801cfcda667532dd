package tideover.engine.installation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.Terminals;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** Nodes and edges. Each thing in the path of power has twelve nodes: six conductors at two sets of terminals. */
final class Netlist {

    static final int CONDUCTORS = Conductor.values().length;
    private static final Conductor[] LINES = {Conductor.L1, Conductor.L2, Conductor.L3};
    static final int PER_THING = 2 * CONDUCTORS;

    private final Map<ThingId, Integer> indexes;
    private final List<Edge> edges;
    private final int[][] edgesAt;
    private final Map<ThingId, Thing> fed;
    private final Map<ThingId, ThingId> parents;
    private final Map<ThingId, List<FactId>> gaps;
    private final boolean supplyHasPen;
    private final Map<ThingId, Set<ThingId>> ancestors = new HashMap<>();
    private final Map<ThingId, List<Conductor>> lines = new HashMap<>();

    Netlist(
            Map<ThingId, Integer> indexes,
            int nodeCount,
            List<Edge> edges,
            Map<ThingId, Thing> fed,
            Map<ThingId, ThingId> parents,
            Map<ThingId, List<FactId>> gaps,
            boolean supplyHasPen) {
        this.indexes = indexes;
        this.edges = List.copyOf(edges);
        this.fed = fed;
        this.parents = parents;
        this.gaps = gaps;
        this.supplyHasPen = supplyHasPen;
        this.edgesAt = adjacency(nodeCount, this.edges);
    }

    private static int[][] adjacency(int nodeCount, List<Edge> edges) {
        int[] degrees = new int[nodeCount];
        for (Edge edge : edges) {
            degrees[edge.from()]++;
            degrees[edge.to()]++;
        }
        int[][] at = new int[nodeCount][];
        for (int node = 0; node < nodeCount; node++) at[node] = new int[degrees[node]];
        for (Edge edge : edges) {
            at[edge.from()][--degrees[edge.from()]] = edge.index();
            at[edge.to()][--degrees[edge.to()]] = edge.index();
        }
        return at;
    }

    List<Edge> edges() {
        return edges;
    }

    int nodeCount() {
        return edgesAt.length;
    }

    int[] edgesAt(int node) {
        return edgesAt[node];
    }

    int node(ThingId thing, Terminals side, Conductor conductor) {
        Integer index = indexes.get(thing);
        if (index == null) throw new IllegalArgumentException(thing + " is not in the path of power");
        return node(index, side, conductor);
    }

    static int node(int thingIndex, Terminals side, Conductor conductor) {
        return thingIndex * PER_THING + side.ordinal() * CONDUCTORS + conductor.ordinal();
    }

    int mainEarth() {
        return indexes.size() * PER_THING;
    }

    int neutralTerminal(ThingId source) {
        boolean pen = source.equals(ThingId.SUPPLY) && supplyHasPen;
        return node(source, Terminals.OUTGOING, pen ? Conductor.PEN : Conductor.N);
    }

    List<FactId> gaps(ThingId thing) {
        return alongTheWay(thing, gaps);
    }

    /** What is noted for a thing and for all it is fed through, along the lines and along the neutral. */
    List<FactId> alongTheWay(ThingId thing, Map<ThingId, List<FactId>> noted) {
        if (noted.isEmpty()) return List.of();
        Set<FactId> all = new LinkedHashSet<>();
        gather(thing, noted, new HashSet<>(), all);
        return List.copyOf(all);
    }

    private void gather(ThingId thing, Map<ThingId, List<FactId>> noted, Set<ThingId> seen, Set<FactId> all) {
        for (ThingId at = thing; at != null && seen.add(at); at = parents.get(at)) {
            all.addAll(noted.getOrDefault(at, List.of()));
            if (fed.get(at) instanceof Fed holder && holder.neutralFrom() != null)
                gather(holder.neutralFrom(), noted, seen, all);
        }
    }

    /** The things a thing is fed through, nearest first, ending with the supply where the way leads there. */
    Set<ThingId> ancestors(ThingId thing) {
        Set<ThingId> known = ancestors.get(thing);
        if (known != null) return known;
        Set<ThingId> all = new LinkedHashSet<>();
        ThingId at = parents.get(thing);
        while (at != null && all.add(at)) at = parents.get(at);
        ancestors.put(thing, all);
        return all;
    }

    /** The line conductors at a thing's outgoing terminals. */
    List<Conductor> lines(ThingId thing) {
        List<Conductor> known = lines.get(thing);
        if (known != null) return known;
        List<Conductor> found = new ArrayList<>(3);
        for (Conductor line : LINES) if (edgesAt(node(thing, Terminals.OUTGOING, line)).length > 0) found.add(line);
        List<Conductor> fixed = List.copyOf(found);
        lines.put(thing, fixed);
        return fixed;
    }

    Set<ThingId> sourcesBehind(ThingId thing) {
        Set<ThingId> sources = new LinkedHashSet<>();
        for (Map.Entry<ThingId, Thing> entry : fed.entrySet())
            if (entry.getValue() instanceof Inverter
                    && (entry.getKey().equals(thing)
                            || ancestors(entry.getKey()).contains(thing))) sources.add(entry.getKey());
        return sources;
    }
}
