package tideover.files;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Predicate;
import tideover.engine.site.ThingKind;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Entry;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Node.Scalar;
import tideover.files.yaml.Node.Sequence;

/**
 * Takes a thing out of the tree of a site altogether: on every side, with what is at it (terminals, settings, a notice),
 * with the ends of cores there, and with what is said of any of them.
 */
final class Removal {
    private static final String CORES = "cores";

    private final Deque<String> waiting = new ArrayDeque<>();
    private Mapping tree;

    private Removal(Mapping tree) {
        this.tree = tree;
    }

    /** The tree without the thing; the same tree where there is no such thing. */
    static Mapping of(Mapping tree, String id) {
        Removal removal = new Removal(tree);
        removal.waiting.add(id);
        while (!removal.waiting.isEmpty()) removal.take(removal.waiting.remove());
        return removal.tree;
    }

    /** The tree without the evidence about some things or facts. */
    static Mapping ofEvidence(Mapping tree, Predicate<String> about) {
        return withItems(
                tree, SiteKeys.EVIDENCE, item -> item instanceof Mapping said && about.test(text(said, "about")));
    }

    private void take(String id) {
        long before = tree.size();
        for (String side : SiteKeys.SIDES)
            if (tree.find(side).orElse(null) instanceof Mapping around)
                tree = tree.with(entryOf(tree, side, without(around, id)));
        if (tree.size() < before) tree = ofEvidence(tree, about -> about.equals(id) || about.startsWith(id + "."));
    }

    private Mapping without(Mapping side, String id) {
        Mapping left = side;
        for (Entry section : side.entries())
            left = withItems(left, section.key(), item -> switch (section.key()) {
                case "removed", "swapped" ->
                    item instanceof Scalar scalar && scalar.text().equals(id);
                case "accepted" -> item instanceof Mapping mapping && id.equals(text(mapping, "place"));
                default -> item instanceof Mapping mapping && isItOrAtIt(mapping, id);
            });
        String cables = ThingKind.CONTROL_CABLE.section();
        if (!(left.find(cables).orElse(null) instanceof Sequence list)) return left;
        List<Node> items = new ArrayList<>();
        for (Node item : list.items()) items.add(item instanceof Mapping cable ? loosened(cable, id) : item);
        return left.with(entryOf(left, cables, Sequence.of(list.spot(), items)));
    }

    private boolean isItOrAtIt(Mapping thing, String id) {
        String own = text(thing, "id");
        if (own.equals(id)) return true;
        if (!text(thing, "at").equals(id)) return false;
        waiting.add(own);
        return true;
    }

    /** A core that ended at the thing lies on as a spare one. */
    private static Mapping loosened(Mapping cable, String port) {
        if (!(cable.find(CORES).orElse(null) instanceof Sequence list)) return cable;
        List<Node> cores = new ArrayList<>();
        for (Node item : list.items()) {
            boolean ends = item instanceof Mapping core
                    && (text(core, "from").startsWith(port + "/")
                            || text(core, "to").startsWith(port + "/"));
            cores.add(ends ? ((Mapping) item).without("from").without("to") : item);
        }
        return cable.with(entryOf(cable, CORES, Sequence.of(list.spot(), cores)));
    }

    private static Mapping withItems(Mapping around, String key, Predicate<Node> gone) {
        if (!(around.find(key).orElse(null) instanceof Sequence list)) return around;
        List<Node> items = new ArrayList<>(list.items());
        if (!items.removeIf(gone)) return around;
        return around.with(entryOf(around, key, Sequence.of(list.spot(), items)));
    }

    /** The key stays where it was; only its value is another. */
    static Entry entryOf(Mapping around, String key, Node value) {
        for (Entry entry : around.entries()) if (entry.key().equals(key)) return new Entry(key, entry.spot(), value);
        return new Entry(key, value.spot(), value);
    }

    /** A single value of a mapping; empty where there is none. */
    static String text(Mapping mapping, String key) {
        return mapping.find(key).orElse(null) instanceof Scalar scalar ? scalar.text() : "";
    }
}
