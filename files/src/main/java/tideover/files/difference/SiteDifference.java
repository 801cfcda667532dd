package tideover.files.difference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Evidence;
import tideover.engine.site.Site;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;
import tideover.files.Edit;
import tideover.files.FieldTable;
import tideover.files.SiteWriter;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Entry;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Node.Sequence;
import tideover.files.yaml.NodeText;

/**
 * Compares sites. What differs is told as edits that say where, what was and what is; a thing that only one site has is
 * told as a whole, and the order in which things stand does not count. Safe to share between threads.
 */
public final class SiteDifference {
    private static final String HOUSE = "house";
    private static final String PLAN = "plan";
    /** The loudest last. */
    private static final List<String> SIDES = List.of(HOUSE, PLAN, Evidence.BUILT);
    /** Lists of ids by side. */
    private static final Map<String, List<String>> ID_LISTS =
            Map.of(PLAN, List.of("removed"), Evidence.BUILT, List.of("swapped", "removed"));

    private static final Map<String, ThingId> SINGLE =
            Map.of("place", ThingId.PLACE, "gridOperator", ThingId.GRID_OPERATOR, "supply", ThingId.SUPPLY);

    private final SiteWriter writer;

    public SiteDifference(FieldTable table) {
        this.writer = new SiteWriter(table);
    }

    /**
     * What is different.
     *
     * @return each with its side before the path, as {@code plan.oven.fedFrom}; empty where the sites are the same
     */
    public List<Edit> between(Site before, Site after) {
        Mapping old = writer.tree(before);
        Mapping now = writer.tree(after);
        List<Edit> found = new ArrayList<>();
        for (String section : List.of("place", "gridOperator", "supply"))
            facts(
                    HOUSE + "." + SINGLE.get(section),
                    part(part(old, HOUSE), section),
                    part(part(now, HOUSE), section),
                    found);
        for (String side : SIDES) {
            for (ThingKind kind : ThingKind.values()) things(side, kind.section(), old, now, found);
            for (String list : ID_LISTS.getOrDefault(side, List.of()))
                compare(side + "." + list + ".", idsOf(part(old, side), list), idsOf(part(now, side), list), found);
        }
        compare("accepted.", acceptedOf(part(old, PLAN)), acceptedOf(part(now, PLAN)), found);
        compare("evidence.", evidenceOf(old), evidenceOf(now), found);
        return found;
    }

    private static void things(String side, String section, Mapping old, Mapping now, List<Edit> found) {
        Map<String, Mapping> olds = thingsOf(part(old, side), section);
        Map<String, Mapping> news = thingsOf(part(now, side), section);
        for (String id : union(olds.keySet(), news.keySet())) {
            Mapping was = olds.get(id);
            Mapping is = news.get(id);
            Mapping wasBelow = below(old, side, section, id);
            Mapping isBelow = below(now, side, section, id);
            if (wasBelow != null && isBelow != null) {
                statedFacts(side + "." + id, was, is, wasBelow, isBelow, found);
            } else if (was != null && is != null) {
                facts(side + "." + id, was, is, found);
            } else {
                found.add(new Edit(side + "." + section + "." + id, whole(was), whole(is)));
            }
        }
    }

    /** What a louder side states of a thing, told as who reads that side sees it: what lies below shows through. */
    private static void statedFacts(
            String path,
            @Nullable Mapping was,
            @Nullable Mapping is,
            Mapping wasBelow,
            Mapping isBelow,
            List<Edit> found) {
        Map<String, String> olds = was == null ? Map.of() : leaves(was);
        Map<String, String> news = is == null ? Map.of() : leaves(is);
        Map<String, String> oldsBelow = leaves(wasBelow);
        Map<String, String> newsBelow = leaves(isBelow);
        for (String field : union(olds.keySet(), news.keySet()))
            add(
                    path + "." + field,
                    olds.getOrDefault(field, oldsBelow.get(field)),
                    news.getOrDefault(field, newsBelow.get(field)),
                    found);
    }

    private static void facts(String path, Mapping was, Mapping is, List<Edit> found) {
        compare(path + ".", leaves(was), leaves(is), found);
    }

    private static void compare(String prefix, Map<String, String> was, Map<String, String> is, List<Edit> found) {
        for (String key : union(was.keySet(), is.keySet())) add(prefix + key, was.get(key), is.get(key), found);
    }

    private static void add(String path, @Nullable String was, @Nullable String is, List<Edit> found) {
        if (!Objects.equals(was, is)) found.add(new Edit(path, was, is));
    }

    /** The single facts of a thing; a list is one fact. */
    private static Map<String, String> leaves(Mapping thing) {
        Map<String, String> leaves = new LinkedHashMap<>();
        leaves("", thing, leaves);
        leaves.remove("id");
        return leaves;
    }

    private static void leaves(String prefix, Mapping group, Map<String, String> leaves) {
        for (Entry entry : group.entries())
            if (entry.value() instanceof Mapping inner) leaves(prefix + entry.key() + ".", inner, leaves);
            else leaves.put(prefix + entry.key(), NodeText.of(entry.value()));
    }

    /** What quieter sides state of a thing, the loudest of them on top. */
    private static @Nullable Mapping below(Mapping tree, String side, String section, String id) {
        Mapping below = null;
        for (String quieter : SIDES.subList(0, SIDES.indexOf(side))) {
            Mapping stated = thingsOf(part(tree, quieter), section).get(id);
            if (stated != null) below = below == null ? stated : over(below, stated);
        }
        return below;
    }

    private static Mapping over(Mapping below, Mapping above) {
        Mapping merged = below;
        for (Entry entry : above.entries()) {
            Node under = below.find(entry.key()).orElse(null);
            Node value = under instanceof Mapping group && entry.value() instanceof Mapping stated
                    ? over(group, stated)
                    : entry.value();
            merged = merged.with(new Entry(entry.key(), entry.spot(), value));
        }
        return merged;
    }

    private static @Nullable String whole(@Nullable Mapping thing) {
        return thing == null ? null : NodeText.of(thing.without("id"));
    }

    private static Map<String, Mapping> thingsOf(Mapping side, String section) {
        Map<String, Mapping> things = new LinkedHashMap<>();
        for (Node item : items(side, section)) if (item instanceof Mapping thing) things.put(text(thing, "id"), thing);
        return things;
    }

    private static Map<String, String> idsOf(Mapping side, String list) {
        Map<String, String> ids = new LinkedHashMap<>();
        for (Node item : items(side, list)) ids.put(NodeText.of(item), "true");
        return ids;
    }

    private static Map<String, String> acceptedOf(Mapping plan) {
        Map<String, String> accepted = new LinkedHashMap<>();
        for (Node item : items(plan, "accepted"))
            if (item instanceof Mapping advice)
                accepted.put(text(advice, "place") + "." + text(advice, "check"), text(advice, "reason"));
        return accepted;
    }

    private static Map<String, String> evidenceOf(Mapping tree) {
        Map<String, String> evidence = new LinkedHashMap<>();
        for (Node item : items(tree, "evidence"))
            if (item instanceof Mapping said) evidence.put(text(said, "about"), NodeText.of(said.without("about")));
        return evidence;
    }

    private static List<Node> items(Mapping around, String key) {
        return around.find(key).orElse(null) instanceof Sequence list ? list.items() : List.of();
    }

    private static Mapping part(Mapping around, String key) {
        return around.find(key).orElse(null) instanceof Mapping part ? part : Mapping.of(around.spot(), List.of());
    }

    private static String text(Mapping around, String key) {
        return around.find(key).map(NodeText::of).orElse("");
    }

    private static Set<String> union(Set<String> first, Set<String> second) {
        Set<String> union = new LinkedHashSet<>(first);
        union.addAll(second);
        return union;
    }
}
