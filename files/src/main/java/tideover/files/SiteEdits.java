package tideover.files;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Site;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;
import tideover.files.EditResult.Conflict;
import tideover.files.EditResult.Conflicting;
import tideover.files.EditResult.Edited;
import tideover.files.EditResult.Refused;
import tideover.files.text.Numbers;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Entry;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Node.Scalar;
import tideover.files.yaml.Node.Sequence;
import tideover.files.yaml.Node.Style;
import tideover.files.yaml.NodeText;
import tideover.files.yaml.Spot;
import tideover.files.yaml.YamlResult;
import tideover.files.yaml.YamlText;

/**
 * Edits sites: the one way in which anything about them changes. What comes out has passed the same reader as a site
 * file. Safe to share between threads.
 */
public final class SiteEdits {
    private static final Spot SPOT = Spot.whole("");
    private static final String ACCEPTED = "accepted";
    private static final String REMOVED = "removed";
    private static final String TRUE = "true";

    private final FieldTable table;
    private final SiteWriter writer;

    public SiteEdits(FieldTable table) {
        this.table = table;
        this.writer = new SiteWriter(table);
    }

    /** Makes the edits one after the other; all or none. */
    public EditResult apply(Site site, List<Edit> edits) {
        Problems problems = new Problems();
        List<Conflict> conflicts = new ArrayList<>();
        Mapping tree = writer.tree(site);
        for (Edit edit : edits) {
            Target target = target(tree, edit.path());
            if (target == null) {
                problems.add(SPOT, edit.path(), ProblemKind.EDIT_PATH, ValueReader.shortened(edit.path()));
                continue;
            }
            String now = value(tree, target);
            if (!same(target, now, edit.before())) {
                // What is there already needs no second change.
                if (!same(target, now, edit.after())) conflicts.add(new Conflict(edit, now));
                continue;
            }
            Node after = edit.after() == null ? null : parse(target, edit.after(), problems);
            Mapping changed = with(tree, target, after);
            if (changed == null)
                problems.add(SPOT, edit.path(), ProblemKind.EDIT_PATH, ValueReader.shortened(edit.path()));
            else tree = changed;
        }
        if (!problems.isEmpty()) return new Refused(problems.all());
        if (!conflicts.isEmpty()) return new Conflicting(conflicts);
        Site edited = new SiteReader(table, problems).read(tree);
        if (edited == null || !problems.isEmpty()) return new Refused(problems.all());
        return new Edited(edited, writer.digest(edited));
    }

    /**
     * What stands at a path, in the form of {@link Edit#before()}; nothing where nothing does.
     *
     * @param path as in {@link Edit}
     */
    public Optional<String> find(Site site, String path) {
        return facts(site).find(path);
    }

    /** The facts of one site, for whoever asks for many. */
    public Facts facts(Site site) {
        return new Facts(writer.tree(site));
    }

    /** What stands at the paths of one site. */
    public final class Facts {
        private final Mapping tree;

        private Facts(Mapping tree) {
            this.tree = tree;
        }

        /** As {@link SiteEdits#find}. */
        public Optional<String> find(String path) {
            Target target = target(tree, path);
            return target == null ? Optional.empty() : Optional.ofNullable(value(tree, target));
        }
    }

    /** What kind of place a path names. */
    private enum Kind {
        FACT,
        THING,
        REMOVED,
        EVIDENCE,
        ACCEPTED
    }

    /**
     * A path, understood.
     *
     * @param side    where it is stated; nothing for evidence
     * @param section of the thing
     * @param thing   or what the evidence is about
     * @param path    inside the thing, or the check
     * @param field   its row; nothing for a whole thing
     */
    private record Target(
            Kind kind,
            String side,
            String section,
            String thing,
            List<String> path,
            @Nullable Field field) {}

    private @Nullable Target target(Mapping tree, String path) {
        String[] parts = path.split("\\.", -1);
        for (String part : parts) if (part.isEmpty()) return null;
        if (parts.length < 2) return null;
        List<String> all = List.of(parts);
        if (parts[0].equals(SiteKeys.EVIDENCE))
            return new Target(
                    Kind.EVIDENCE, "", SiteKeys.EVIDENCE, path.substring(parts[0].length() + 1), List.of(), null);
        if (parts[0].equals(ACCEPTED)) {
            if (parts.length != 4) return null;
            return new Target(
                    Kind.ACCEPTED, SiteKeys.PLAN, ACCEPTED, parts[1], List.of(parts[2] + "." + parts[3]), null);
        }
        boolean sided = SiteKeys.SIDES.contains(parts[0]);
        List<String> rest = sided ? all.subList(1, all.size()) : all;
        if (sided && rest.size() == 2) {
            if (rest.get(0).equals(REMOVED) && !parts[0].equals(SiteKeys.HOUSE))
                return new Target(Kind.REMOVED, parts[0], REMOVED, rest.get(1), List.of(), null);
            if (ThingKind.findBySection(rest.get(0)).isPresent() && sectionOf(tree, rest.get(0)) == null)
                return new Target(Kind.THING, parts[0], rest.get(0), rest.get(1), List.of(), null);
        }
        if (rest.size() < 2) return null;
        String thing = rest.get(0);
        String section = sectionOf(tree, thing);
        if (section == null) return null;
        List<String> inside = rest.subList(1, rest.size());
        Field field = table.find(section + "." + String.join(".", withoutNumbers(inside)))
                .orElse(null);
        String side = sided ? parts[0] : lastStated(tree, section, thing);
        return field == null ? null : new Target(Kind.FACT, side, section, thing, inside, field);
    }

    private static List<String> withoutNumbers(List<String> path) {
        return path.stream().filter(part -> !Character.isDigit(part.charAt(0))).toList();
    }

    private static String lastStated(Mapping tree, String section, String thing) {
        for (String side : List.of(SiteKeys.BUILT, SiteKeys.PLAN))
            if (thing(tree, side, section, thing) != null) return side;
        return SiteKeys.HOUSE;
    }

    /** The section in which a thing is stated on any side; nothing where it is not. */
    private static @Nullable String sectionOf(Mapping tree, String thing) {
        for (ThingId single : List.of(ThingId.PLACE, ThingId.GRID_OPERATOR, ThingId.SUPPLY))
            if (single.text().equals(thing)) return single.equals(ThingId.GRID_OPERATOR) ? "gridOperator" : thing;
        for (String side : SiteKeys.SIDES)
            for (ThingKind kind : ThingKind.values())
                if (thing(tree, side, kind.section(), thing) != null) return kind.section();
        return null;
    }

    private static @Nullable Mapping thing(Mapping tree, String side, String section, String thing) {
        if (!(tree.find(side).orElse(null) instanceof Mapping around)) return null;
        Node part = around.find(section).orElse(null);
        if (part instanceof Mapping single) return single;
        if (!(part instanceof Sequence list)) return null;
        for (Node item : list.items())
            if (item instanceof Mapping mapping && Removal.text(mapping, "id").equals(thing)) return mapping;
        return null;
    }

    /** What stands there; on the plan's side what was found shows through, as it does to whoever reads the plan. */
    private static @Nullable String value(Mapping tree, Target target) {
        return switch (target.kind()) {
            case FACT -> {
                List<String> sides = SiteKeys.SIDES.subList(0, SiteKeys.SIDES.indexOf(target.side()) + 1);
                Node found = null;
                for (String side : sides) {
                    Mapping thing = thing(tree, side, target.section(), target.thing());
                    Node stated = thing == null ? null : at(thing, target.path());
                    if (stated != null) found = over(found, stated);
                }
                yield found == null ? null : text(found);
            }
            case THING -> {
                Mapping thing = thing(tree, target.side(), target.section(), target.thing());
                yield thing == null ? null : text(thing.without("id"));
            }
            case REMOVED -> isRemoved(tree, target) ? TRUE : null;
            case EVIDENCE -> {
                Mapping said = item(tree, SiteKeys.EVIDENCE, "about", target.thing(), null);
                yield said == null ? null : text(said.without("about"));
            }
            case ACCEPTED -> {
                Mapping advice = tree.find(SiteKeys.PLAN).orElse(null) instanceof Mapping plan
                        ? item(
                                plan,
                                ACCEPTED,
                                "place",
                                target.thing(),
                                target.path().get(0))
                        : null;
                yield advice == null ? null : Removal.text(advice, "reason");
            }
        };
    }

    private static boolean isRemoved(Mapping tree, Target target) {
        return tree.find(target.side()).orElse(null) instanceof Mapping side
                && side.find(REMOVED).orElse(null) instanceof Sequence list
                && list.items().stream().anyMatch(item -> text(item).equals(target.thing()));
    }

    private static @Nullable Mapping item(
            Mapping around, String list, String key, String value, @Nullable String check) {
        if (!(around.find(list).orElse(null) instanceof Sequence items)) return null;
        for (Node item : items.items())
            if (item instanceof Mapping mapping
                    && Removal.text(mapping, key).equals(value)
                    && (check == null || Removal.text(mapping, "check").equals(check))) return mapping;
        return null;
    }

    private static @Nullable Node at(Node around, List<String> path) {
        if (path.isEmpty()) return around;
        Node next = null;
        if (around instanceof Mapping mapping) next = mapping.find(path.get(0)).orElse(null);
        else if (around instanceof Sequence list)
            for (int i = 0; i < list.items().size(); i++)
                if (path.get(0).equals(Integer.toString(i + 1)))
                    next = list.items().get(i);
        return next == null ? null : at(next, path.subList(1, path.size()));
    }

    /** A group stated twice is laid over, as in the site. */
    private static Node over(@Nullable Node under, Node above) {
        if (!(under instanceof Mapping below) || !(above instanceof Mapping stated)) return above;
        Mapping merged = below;
        for (Entry entry : stated.entries())
            merged = merged.with(
                    new Entry(entry.key(), SPOT, over(below.find(entry.key()).orElse(null), entry.value())));
        return merged;
    }

    private @Nullable Mapping with(Mapping tree, Target target, @Nullable Node after) {
        return switch (target.kind()) {
            case FACT -> withFact(tree, target, after);
            case THING -> after == null ? withoutThing(tree, target) : withThing(tree, target, after);
            case REMOVED -> withRemoved(tree, target, after != null);
            case EVIDENCE ->
                withItem(
                        tree,
                        SiteKeys.EVIDENCE,
                        item(tree, SiteKeys.EVIDENCE, "about", target.thing(), null),
                        after instanceof Mapping said ? first("about", target.thing(), said) : null);
            case ACCEPTED -> withAccepted(tree, target, after);
        };
    }

    private static @Nullable Mapping withFact(Mapping tree, Target target, @Nullable Node after) {
        Mapping thing = thing(tree, target.side(), target.section(), target.thing());
        Node wanted = after;
        if (!target.side().equals(SiteKeys.HOUSE)) {
            Target below = new Target(
                    Kind.FACT, SiteKeys.HOUSE, target.section(), target.thing(), target.path(), target.field());
            String found = value(tree, below);
            if (after != null && same(target, found, text(after))) wanted = null;
            if (thing == null && isStated(tree, target.section(), target.thing()))
                thing = Mapping.of(
                        SPOT, List.of(new Entry("id", SPOT, new Scalar(SPOT, target.thing(), Style.QUOTED))));
        }
        if (thing == null) return null;
        Mapping changed = thing.put(target.path(), SPOT, wanted).orElse(null);
        if (changed == null) return null;
        String about = target.thing() + "." + String.join(".", target.path());
        // What was said of the old value says nothing of the new one.
        Mapping left = Removal.ofEvidence(tree, said -> said.equals(about) || said.startsWith(about + "."));
        boolean nothingLeft = changed.entries().size() == 1
                && changed.find("id").isPresent()
                && !target.side().equals(SiteKeys.HOUSE)
                && thing(tree, SiteKeys.HOUSE, target.section(), target.thing()) != null;
        return replaced(left, target, nothingLeft ? null : changed);
    }

    private static boolean isStated(Mapping tree, String section, String thing) {
        return SiteKeys.SIDES.stream().anyMatch(side -> thing(tree, side, section, thing) != null);
    }

    private static Mapping withThing(Mapping tree, Target target, Node after) {
        return after instanceof Mapping stated ? replaced(tree, target, first("id", target.thing(), stated)) : tree;
    }

    /** What the house or the plan alone knows goes altogether, with what belongs to it; a planned change goes alone. */
    private static Mapping withoutThing(Mapping tree, Target target) {
        boolean found = thing(tree, SiteKeys.HOUSE, target.section(), target.thing()) != null;
        return found && !target.side().equals(SiteKeys.HOUSE)
                ? replaced(tree, target, null)
                : Removal.of(tree, target.thing());
    }

    /** The tree with a thing put in the place of the one that bears its id, or last in its list. */
    private static Mapping replaced(Mapping tree, Target target, @Nullable Mapping thing) {
        Mapping side =
                tree.find(target.side()).orElse(null) instanceof Mapping stated ? stated : Mapping.of(SPOT, List.of());
        Node part = side.find(target.section()).orElse(null);
        boolean single = SiteKeys.isSingle(target.section());
        if (single && thing != null)
            return tree.with(new Entry(target.side(), SPOT, side.with(new Entry(target.section(), SPOT, thing))));
        List<Node> items = new ArrayList<>(part instanceof Sequence list ? list.items() : List.of());
        int at = -1;
        for (int i = 0; i < items.size(); i++)
            if (items.get(i) instanceof Mapping item && Removal.text(item, "id").equals(target.thing())) at = i;
        if (thing == null && at >= 0) items.remove(at);
        else if (thing != null && at >= 0) items.set(at, thing);
        else if (thing != null) items.add(thing);
        return tree.with(
                new Entry(target.side(), SPOT, side.with(new Entry(target.section(), SPOT, Sequence.of(SPOT, items)))));
    }

    private static Mapping withRemoved(Mapping tree, Target target, boolean removed) {
        Mapping side =
                tree.find(target.side()).orElse(null) instanceof Mapping stated ? stated : Mapping.of(SPOT, List.of());
        List<Node> ids =
                new ArrayList<>(side.find(REMOVED).orElse(null) instanceof Sequence list ? list.items() : List.of());
        if (removed) ids.add(new Scalar(SPOT, target.thing(), Style.QUOTED));
        else ids.removeIf(item -> text(item).equals(target.thing()));
        return tree.with(new Entry(target.side(), SPOT, side.with(new Entry(REMOVED, SPOT, Sequence.of(SPOT, ids)))));
    }

    private static Mapping withAccepted(Mapping tree, Target target, @Nullable Node reason) {
        Mapping plan =
                tree.find(SiteKeys.PLAN).orElse(null) instanceof Mapping stated ? stated : Mapping.of(SPOT, List.of());
        String check = target.path().get(0);
        Mapping advice = reason == null
                ? null
                : Mapping.of(
                        SPOT,
                        List.of(
                                new Entry("check", SPOT, new Scalar(SPOT, check, Style.QUOTED)),
                                new Entry("place", SPOT, new Scalar(SPOT, target.thing(), Style.QUOTED)),
                                new Entry("reason", SPOT, reason)));
        Mapping changed = withItem(plan, ACCEPTED, item(plan, ACCEPTED, "place", target.thing(), check), advice);
        return tree.with(new Entry(SiteKeys.PLAN, SPOT, changed));
    }

    private static Mapping withItem(Mapping around, String key, @Nullable Mapping old, @Nullable Mapping item) {
        List<Node> items =
                new ArrayList<>(around.find(key).orElse(null) instanceof Sequence list ? list.items() : List.of());
        int at = old == null ? -1 : items.indexOf(old);
        if (item == null && at >= 0) items.remove(at);
        else if (item != null && at >= 0) items.set(at, item);
        else if (item != null) items.add(item);
        return around.with(new Entry(key, SPOT, Sequence.of(SPOT, items)));
    }

    private static Mapping first(String key, String value, Mapping rest) {
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry(key, SPOT, new Scalar(SPOT, value, Style.QUOTED)));
        for (Entry entry : rest.entries()) if (!entry.key().equals(key)) entries.add(entry);
        return Mapping.of(SPOT, entries);
    }

    private static @Nullable Node parse(Target target, String text, Problems problems) {
        Field field = target.field();
        if (target.kind() == Kind.REMOVED) return text.equals(TRUE) ? new Scalar(SPOT, TRUE, Style.PLAIN) : null;
        if (target.kind() == Kind.ACCEPTED) return new Scalar(SPOT, text, Style.QUOTED);
        if (field != null && !field.kind().isList() && field.kind() != FieldKind.GROUP) {
            boolean plain = switch (field.kind()) {
                case NUMBER, WHOLE, YES_NO -> true;
                default -> false;
            };
            return new Scalar(SPOT, text, plain ? Style.PLAIN : Style.QUOTED);
        }
        YamlResult result = YamlText.read("", text.getBytes(StandardCharsets.UTF_8));
        result.problems().forEach(problem -> problems.add(InputProblem.of(problem)));
        return result.root();
    }

    private static boolean same(Target target, @Nullable String one, @Nullable String other) {
        if (one == null || other == null || one.equals(other)) return Objects.equals(one, other);
        Field field = target.field();
        if (field != null && (field.kind() == FieldKind.NUMBER || field.kind() == FieldKind.WHOLE)) {
            Double a = Numbers.parse(one);
            return a != null && a.equals(Numbers.parse(other));
        }
        boolean group = field == null
                ? target.kind() != Kind.ACCEPTED
                : field.kind().isList() || field.kind() == FieldKind.GROUP;
        if (!group) return false;
        Problems ignored = new Problems();
        Node a = parse(target, one, ignored);
        Node b = parse(target, other, ignored);
        return a != null && b != null && text(a).equals(text(b));
    }

    private static String text(Node node) {
        return NodeText.of(node);
    }
}
