package tideover.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Digest;
import tideover.engine.site.Site;
import tideover.engine.site.ThingKind;
import tideover.files.EditPlace.OfAdvice;
import tideover.files.EditPlace.OfEvidence;
import tideover.files.EditPlace.OfFact;
import tideover.files.EditPlace.OfRemoval;
import tideover.files.EditPlace.OfThing;
import tideover.files.EditResult.Conflict;
import tideover.files.EditResult.Conflicting;
import tideover.files.EditResult.Edited;
import tideover.files.EditResult.Refused;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Mapping;

/**
 * Edits sites: the one way in which anything about them changes. What comes out has passed the same reader as a site
 * file. Safe to share between threads.
 */
public final class SiteEdits {
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
        StatedThings tree = new StatedThings(writer.tree(site));
        for (Edit edit : edits) {
            EditPlace place = place(tree, edit.path());
            String now = place == null ? null : place.value(tree);
            if (place != null && !place.same(now, edit.before())) {
                // What is there already needs no second change.
                if (!place.same(now, edit.after())) conflicts.add(new Conflict(edit, now));
                continue;
            }
            Mapping changed = place == null ? null : place.with(tree, after(place, edit, problems));
            if (changed == null)
                problems.add(EditPlace.SPOT, edit.path(), ProblemKind.EDIT_PATH, ValueReader.shortened(edit.path()));
            else tree = new StatedThings(changed);
        }
        if (!problems.isEmpty()) return new Refused(problems.all());
        if (!conflicts.isEmpty()) return new Conflicting(conflicts);
        Site edited = new SiteReader(table, problems).read(tree.root());
        if (edited == null || !problems.isEmpty()) return new Refused(problems.all());
        String json = writer.canonicalJson(edited);
        return new Edited(edited, json, Digest.of(json));
    }

    private static @Nullable Node after(EditPlace place, Edit edit, Problems problems) {
        return edit.after() == null ? null : place.read(edit.after(), problems);
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
        return new Facts(new StatedThings(writer.tree(site)));
    }

    /** What stands at the paths of one site. */
    public final class Facts {
        private final StatedThings tree;

        private Facts(StatedThings tree) {
            this.tree = tree;
        }

        /** As {@link SiteEdits#find}. */
        public Optional<String> find(String path) {
            EditPlace place = place(tree, path);
            return place == null ? Optional.empty() : Optional.ofNullable(place.value(tree));
        }

        /** One fact or group of them as a node; nothing where nothing is stated, or the path names no fact. */
        public Optional<Node> findNode(String path) {
            return place(tree, path) instanceof OfFact fact ? Optional.ofNullable(fact.node(tree)) : Optional.empty();
        }
    }

    /** The place that a path names; nothing where there is none. */
    private @Nullable EditPlace place(StatedThings tree, String path) {
        List<String> parts = List.of(path.split("\\.", -1));
        if (parts.size() < 2 || parts.contains("")) return null;
        String first = parts.get(0);
        if (first.equals(SiteKeys.EVIDENCE)) return new OfEvidence(path.substring(first.length() + 1));
        if (first.equals(EditPlace.ACCEPTED))
            return parts.size() == 4 ? new OfAdvice(parts.get(1), parts.get(2) + "." + parts.get(3)) : null;
        if (!SiteKeys.SIDES.contains(first)) return fact(tree.lastOf(first), parts);
        String second = parts.get(1);
        if (parts.size() == 3) {
            if (second.equals(EditPlace.REMOVED) && !first.equals(SiteKeys.HOUSE))
                return new OfRemoval(first, parts.get(2));
            if (ThingKind.findBySection(second).isPresent() && tree.lastOf(second) == null)
                return new OfThing(new StatedThings.Place(first, second, parts.get(2)));
        }
        StatedThings.Place thing = tree.lastOf(second);
        return fact(thing == null ? null : thing.on(first), parts.subList(1, parts.size()));
    }

    private @Nullable EditPlace fact(StatedThings.@Nullable Place thing, List<String> parts) {
        if (thing == null || parts.size() < 2) return null;
        List<String> inside = parts.subList(1, parts.size());
        // An item of a list is named by its number, for which the field table has no row.
        List<String> names = inside.stream()
                .filter(part -> !Character.isDigit(part.charAt(0)))
                .toList();
        Field field =
                table.find(thing.section() + "." + String.join(".", names)).orElse(null);
        return field == null ? null : new OfFact(thing, inside, field);
    }
}
