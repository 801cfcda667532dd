package tideover.files;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
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

/** A place in a site that an edit may change, found in the tree of that site. */
sealed interface EditPlace {
    Spot SPOT = Spot.whole("");
    String ACCEPTED = "accepted";
    String REMOVED = "removed";
    String TRUE = "true";

    /** What stands there, as an edit names it; nothing where nothing does. */
    @Nullable
    String value(StatedThings tree);

    /** The tree with something else there; nothing where the place is not to be had. */
    @Nullable
    Mapping with(StatedThings tree, @Nullable Node after);

    /** What an edit wants there. */
    default @Nullable Node read(String text, Problems problems) {
        YamlResult result = YamlText.read("", text.getBytes(StandardCharsets.UTF_8));
        result.problems().forEach(problem -> problems.add(InputProblem.of(problem)));
        return result.root();
    }

    /** Whether two texts say the same there, however they are written. */
    default boolean same(@Nullable String one, @Nullable String other) {
        if (one == null || other == null || one.equals(other)) return Objects.equals(one, other);
        Problems ignored = new Problems();
        Node a = read(one, ignored);
        Node b = read(other, ignored);
        return a != null && b != null && NodeText.of(a).equals(NodeText.of(b));
    }

    /**
     * One fact, or a group of them.
     *
     * @param path inside the thing
     */
    record OfFact(StatedThings.Place thing, List<String> path, Field field) implements EditPlace {

        /** On the plan's side what was found shows through, as it does to whoever reads the plan. */
        @Override
        public @Nullable String value(StatedThings tree) {
            Node found = node(tree);
            return found == null ? null : NodeText.of(found);
        }

        @Nullable
        Node node(StatedThings tree) {
            Node found = null;
            for (String side : thing.sidesUpToThis()) {
                Mapping stated = tree.find(thing.on(side));
                Node here = stated == null ? null : at(stated, path);
                if (here != null) found = over(found, here);
            }
            return found;
        }

        @Override
        public @Nullable Mapping with(StatedThings tree, @Nullable Node after) {
            boolean planned = !thing.side().equals(SiteKeys.HOUSE);
            Mapping stated = tree.find(thing);
            if (stated == null && planned && tree.isStated(thing)) stated = Mapping.of(SPOT, List.of(thing.idEntry()));
            if (stated == null) return null;
            String found = planned ? new OfFact(thing.on(SiteKeys.HOUSE), path, field).value(tree) : null;
            boolean asFound = planned && after != null && same(found, NodeText.of(after));
            Mapping changed = stated.put(path, SPOT, asFound ? null : after).orElse(null);
            if (changed == null) return null;
            String about = thing.id() + "." + String.join(".", path);
            // What was said of the old value says nothing of the new one.
            Mapping left = Removal.ofEvidence(tree.root(), said -> said.equals(about) || said.startsWith(about + "."));
            boolean nothingLeft =
                    planned && changed.entries().size() == 1 && tree.find(thing.on(SiteKeys.HOUSE)) != null;
            return thing.put(left, nothingLeft ? null : changed);
        }

        @Override
        public @Nullable Node read(String text, Problems problems) {
            return switch (field.kind()) {
                case NUMBER, WHOLE, YES_NO -> new Scalar(SPOT, text, Style.PLAIN);
                case ID, TEXT, WORD, DATE, REFERENCE, TERMINAL -> new Scalar(SPOT, text, Style.QUOTED);
                case TEXTS, WORDS, REFERENCES, GROUP, GROUPS -> EditPlace.super.read(text, problems);
            };
        }

        @Override
        public boolean same(@Nullable String one, @Nullable String other) {
            Double a = one == null || !isNumber() ? null : Numbers.parse(one);
            if (a != null && other != null) return a.equals(Numbers.parse(other));
            return EditPlace.super.same(one, other);
        }

        private boolean isNumber() {
            return field.kind() == FieldKind.NUMBER || field.kind() == FieldKind.WHOLE;
        }

        private static @Nullable Node at(Node around, List<String> path) {
            if (path.isEmpty()) return around;
            Node next = null;
            if (around instanceof Mapping mapping)
                next = mapping.find(path.get(0)).orElse(null);
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
                merged = merged.with(new Entry(
                        entry.key(), SPOT, over(below.find(entry.key()).orElse(null), entry.value())));
            return merged;
        }
    }

    /** A whole thing on one side. */
    record OfThing(StatedThings.Place thing) implements EditPlace {
        @Override
        public @Nullable String value(StatedThings tree) {
            Mapping stated = tree.find(thing);
            return stated == null ? null : NodeText.of(stated.without("id"));
        }

        /** What house or plan alone knows goes altogether, with what belongs to it; a planned change goes alone. */
        @Override
        public @Nullable Mapping with(StatedThings tree, @Nullable Node after) {
            if (after instanceof Mapping stated) return thing.put(tree.root(), behind(thing.idEntry(), stated));
            if (after != null) return null;
            boolean found = tree.find(thing.on(SiteKeys.HOUSE)) != null;
            return found && !thing.side().equals(SiteKeys.HOUSE)
                    ? thing.put(tree.root(), null)
                    : Removal.of(tree.root(), thing.id());
        }
    }

    /** That a side takes a thing out. */
    record OfRemoval(String side, String id) implements EditPlace {
        @Override
        public @Nullable String value(StatedThings tree) {
            return items(tree.side(side), REMOVED).stream()
                            .anyMatch(item -> NodeText.of(item).equals(id))
                    ? TRUE
                    : null;
        }

        @Override
        public Mapping with(StatedThings tree, @Nullable Node after) {
            Mapping around = tree.side(side);
            List<Node> ids = items(around, REMOVED);
            ids.removeIf(item -> NodeText.of(item).equals(id));
            if (after != null) ids.add(new Scalar(SPOT, id, Style.QUOTED));
            return tree.root()
                    .with(new Entry(side, SPOT, around.with(new Entry(REMOVED, SPOT, Sequence.of(SPOT, ids)))));
        }

        @Override
        public @Nullable Node read(String text, Problems problems) {
            return text.equals(TRUE) ? new Scalar(SPOT, TRUE, Style.PLAIN) : null;
        }
    }

    /** Who or what says so. */
    record OfEvidence(String about) implements EditPlace {
        @Override
        public @Nullable String value(StatedThings tree) {
            for (Node item : items(tree.root(), SiteKeys.EVIDENCE))
                if (isIt(item)) return NodeText.of(((Mapping) item).without("about"));
            return null;
        }

        @Override
        public Mapping with(StatedThings tree, @Nullable Node after) {
            Entry name = new Entry("about", SPOT, new Scalar(SPOT, about, Style.QUOTED));
            return swapped(tree.root(), SiteKeys.EVIDENCE, after instanceof Mapping said ? behind(name, said) : null);
        }

        private Mapping swapped(Mapping tree, String key, @Nullable Mapping item) {
            List<Node> items = items(tree, key);
            items.removeIf(this::isIt);
            if (item != null) items.add(item);
            return tree.with(new Entry(key, SPOT, Sequence.of(SPOT, items)));
        }

        private boolean isIt(Node item) {
            return item instanceof Mapping said && Removal.text(said, "about").equals(about);
        }
    }

    /** The reason why advice is not followed. */
    record OfAdvice(String place, String check) implements EditPlace {
        @Override
        public @Nullable String value(StatedThings tree) {
            for (Node item : items(tree.side(SiteKeys.PLAN), ACCEPTED))
                if (isIt(item)) return Removal.text((Mapping) item, "reason");
            return null;
        }

        @Override
        public Mapping with(StatedThings tree, @Nullable Node after) {
            Mapping plan = tree.side(SiteKeys.PLAN);
            List<Node> items = items(plan, ACCEPTED);
            items.removeIf(this::isIt);
            if (after != null)
                items.add(Mapping.of(
                        SPOT, List.of(entry("check", check), entry("place", place), new Entry("reason", SPOT, after))));
            return tree.root()
                    .with(new Entry(
                            SiteKeys.PLAN, SPOT, plan.with(new Entry(ACCEPTED, SPOT, Sequence.of(SPOT, items)))));
        }

        @Override
        public Node read(String text, Problems problems) {
            return new Scalar(SPOT, text, Style.QUOTED);
        }

        private static Entry entry(String key, String value) {
            return new Entry(key, SPOT, new Scalar(SPOT, value, Style.QUOTED));
        }

        private boolean isIt(Node item) {
            return item instanceof Mapping advice
                    && Removal.text(advice, "place").equals(place)
                    && Removal.text(advice, "check").equals(check);
        }
    }

    /** The items of a list, to be changed freely. */
    private static List<Node> items(Mapping around, String key) {
        return new ArrayList<>(around.find(key).orElse(null) instanceof Sequence list ? list.items() : List.of());
    }

    /** A mapping that begins with what names it. */
    private static Mapping behind(Entry name, Mapping rest) {
        List<Entry> entries = new ArrayList<>();
        entries.add(name);
        for (Entry entry : rest.entries()) if (!entry.key().equals(name.key())) entries.add(entry);
        return Mapping.of(SPOT, entries);
    }
}
