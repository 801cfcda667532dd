package tideover.store.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tideover.engine.site.ThingKind;
import tideover.files.Edit;

/** Tells whether two edits concern the same: one path may name the side or the whole thing, the other one fact in it. */
final class EditPaths {
    private static final Set<String> SIDES = Set.of("house", "plan", "built");

    private EditPaths() {}

    static boolean touch(List<Edit> edits, Edit other) {
        List<String> wanted = parts(other.path());
        return edits.stream()
                .anyMatch(edit -> isWithin(parts(edit.path()), wanted) || isWithin(wanted, parts(edit.path())));
    }

    private static boolean isWithin(List<String> inner, List<String> outer) {
        return inner.size() >= outer.size() && inner.subList(0, outer.size()).equals(outer);
    }

    /** The thing and what follows, without side, section and the list of removed things. */
    private static List<String> parts(String path) {
        List<String> parts = new ArrayList<>(List.of(path.split("\\.")));
        if (!SIDES.contains(parts.get(0))) return parts;
        parts.remove(0);
        if (parts.size() == 2
                && (parts.get(0).equals("removed")
                        || ThingKind.findBySection(parts.get(0)).isPresent())) parts.remove(0);
        return parts;
    }
}
