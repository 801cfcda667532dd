package tideover.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;
import tideover.files.text.Nearest;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Entry;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Node.Scalar;
import tideover.files.yaml.Node.Sequence;
import tideover.files.yaml.Spot;

/**
 * What a variant file changes in the tree of its base: facts set or forgotten, things added to the plan or to what was
 * built, things taken out altogether. New nodes keep their place in the variant, so that what is wrong with them is reported there.
 */
final class Variant {
    private static final String SET = "set";
    private static final String ADD = "add";
    private static final String REMOVE = "remove";

    private final Problems problems;
    private final Nearest nearest = new Nearest();
    private Mapping tree;

    private Variant(Mapping base, Problems problems) {
        this.tree = base;
        this.problems = problems;
    }

    /** The tree of the site that the variant describes. */
    static Mapping over(Mapping base, Mapping variant, Problems problems) {
        Variant edits = new Variant(base, problems);
        FormReader forms = new FormReader(problems, edits.nearest);
        for (Entry entry : variant.entries()) {
            if (!SiteKeys.VARIANT.contains(entry.key())) forms.unknownKey(entry, entry.key(), SiteKeys.VARIANT);
            if (entry.key().equals("story") && !(entry.value() instanceof Scalar))
                problems.add(entry.value().spot(), "story", ProblemKind.VALUE_EXPECTED, "story");
        }
        edits.remove(list(variant, REMOVE, problems));
        for (Entry entry : mapping(variant, SET, problems)) edits.set(entry);
        for (Entry entry : mapping(variant, ADD, problems)) edits.add(entry, ADD, SiteKeys.PLAN, SiteKeys.PLAN_PARTS);
        for (Entry entry : mapping(variant, SiteKeys.BUILT, problems))
            edits.add(entry, SiteKeys.BUILT, SiteKeys.BUILT, SiteKeys.BUILT_PARTS);
        return edits.tree;
    }

    private void set(Entry entry) {
        String where = SET + "." + entry.key();
        int dot = entry.key().indexOf('.');
        if (dot < 1 || dot == entry.key().length() - 1) {
            problems.add(entry.spot(), where, ProblemKind.FACT_FORM, ValueReader.shortened(entry.key()));
            return;
        }
        String thing = entry.key().substring(0, dot);
        List<String> path = List.of(entry.key().substring(dot + 1).split("\\.", -1));
        boolean forget = entry.value().isNothing();
        boolean known = false;
        // What was built is changed there, else what the plan states; a fact to forget is forgotten on both sides.
        for (String side : List.of(SiteKeys.BUILT, SiteKeys.PLAN, SiteKeys.HOUSE)) {
            if (known && !forget) break;
            Mapping changed = setIn(side, thing, path, entry);
            if (changed == null) continue;
            known = true;
            tree = tree.with(Removal.entryOf(tree, side, changed));
        }
        if (!known) unknownThing(entry.spot(), where, thing);
        else if (forget)
            tree = Removal.ofEvidence(tree, about -> about.equals(entry.key()) || about.startsWith(entry.key() + "."));
    }

    /** The side of the tree with the fact set, or nothing where the thing is not stated there. */
    private @Nullable Mapping setIn(String side, String thing, List<String> path, Entry entry) {
        Mapping around = tree.find(side)
                .filter(Mapping.class::isInstance)
                .map(Mapping.class::cast)
                .orElse(null);
        if (around == null) return null;
        String section = section(thing);
        if (section != null) {
            if (!side.equals(SiteKeys.HOUSE)) return null;
            Node part = around.find(section).orElse(Mapping.of(entry.spot(), List.of()));
            return part instanceof Mapping mapping
                    ? around.with(Removal.entryOf(around, section, put(mapping, path, entry)))
                    : null;
        }
        for (ThingKind kind : ThingKind.values()) {
            if (!(around.find(kind.section()).orElse(null) instanceof Sequence list)) continue;
            for (int i = 0; i < list.items().size(); i++) {
                if (!(list.items().get(i) instanceof Mapping mapping) || !thing.equals(id(mapping))) continue;
                List<Node> items = new ArrayList<>(list.items());
                items.set(i, put(mapping, path, entry));
                return around.with(Removal.entryOf(around, kind.section(), Sequence.of(list.spot(), items)));
            }
        }
        return null;
    }

    private Mapping put(Mapping mapping, List<String> path, Entry entry) {
        Node value = entry.value().isNothing() ? null : entry.value();
        Mapping changed = mapping.put(path, entry.spot(), value).orElse(null);
        if (changed != null) return changed;
        problems.add(entry.spot(), SET + "." + entry.key(), ProblemKind.FACT_FORM, ValueReader.shortened(entry.key()));
        return mapping;
    }

    private void add(Entry entry, String key, String side, List<String> parts) {
        String where = key + "." + entry.key();
        if (!parts.contains(entry.key())) {
            new FormReader(problems, nearest).unknownKey(entry, where, parts);
            return;
        }
        if (!(entry.value() instanceof Sequence more)) {
            problems.add(
                    entry.value().spot(), where, ProblemKind.LIST_EXPECTED, where, FormReader.found(entry.value()));
            return;
        }
        Node stated = tree.find(side).orElse(null);
        Mapping around = stated instanceof Mapping mapping ? mapping : Mapping.of(entry.spot(), List.of());
        List<Node> items = new ArrayList<>();
        if (around.find(entry.key()).orElse(null) instanceof Sequence list) items.addAll(list.items());
        items.addAll(more.items());
        Sequence all = Sequence.of(more.spot(), items);
        tree = tree.with(Removal.entryOf(tree, side, around.with(new Entry(entry.key(), entry.spot(), all))));
    }

    private void remove(List<Node> ids) {
        for (Node node : ids) {
            String id = node instanceof Scalar scalar ? scalar.text() : "";
            Mapping left = id.isEmpty() ? tree : Removal.of(tree, id);
            if (left.size() == tree.size()) unknownThing(node.spot(), REMOVE, id);
            tree = left;
        }
    }

    private void unknownThing(Spot spot, String where, String thing) {
        Set<String> names = new TreeSet<>();
        for (ThingId single : List.of(ThingId.PLACE, ThingId.GRID_OPERATOR, ThingId.SUPPLY))
            if (where.startsWith(SET)) names.add(single.text());
        for (String side : SiteKeys.SIDES)
            if (tree.find(side).orElse(null) instanceof Mapping around)
                for (Entry section : around.entries())
                    if (section.value() instanceof Sequence list)
                        for (Node item : list.items()) if (item instanceof Mapping mapping) names.add(id(mapping));
        names.remove("");
        String near = nearest.of(thing, names);
        String shortened = ValueReader.shortened(thing);
        if (near == null) problems.add(spot, where, ProblemKind.THING_UNKNOWN, where, shortened);
        else problems.add(spot, where, ProblemKind.THING_UNKNOWN_NEAR, where, shortened, near);
    }

    private static @Nullable String section(String thing) {
        if (thing.equals(ThingId.PLACE.text())) return "place";
        if (thing.equals(ThingId.GRID_OPERATOR.text())) return "gridOperator";
        return thing.equals(ThingId.SUPPLY.text()) ? "supply" : null;
    }

    private static String id(Mapping thing) {
        return Removal.text(thing, "id");
    }

    private static List<Entry> mapping(Mapping variant, String key, Problems problems) {
        Node node = variant.find(key).orElse(null);
        if (node == null || node.isNothing()) return List.of();
        if (node instanceof Mapping mapping) return mapping.entries();
        problems.add(node.spot(), key, ProblemKind.MAPPING_EXPECTED, key, FormReader.found(node));
        return List.of();
    }

    private static List<Node> list(Mapping variant, String key, Problems problems) {
        Node node = variant.find(key).orElse(null);
        if (node == null || node.isNothing()) return List.of();
        if (node instanceof Sequence list) return list.items();
        problems.add(node.spot(), key, ProblemKind.LIST_EXPECTED, key, FormReader.found(node));
        return List.of();
    }
}
