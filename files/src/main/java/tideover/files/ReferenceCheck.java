package tideover.files;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.ThingId;
import tideover.files.Reference.Side;

/** Whether everything named exists, is of the kind that may be named there, and is still there once the plan is done. */
final class ReferenceCheck {
    private final Map<ThingId, Stated> found;
    private final Map<ThingId, Stated> planned;
    private final Set<ThingId> removed;
    private final Problems problems;
    private final Nearest nearest;
    private @Nullable Set<String> names;

    ReferenceCheck(
            Map<ThingId, Stated> found,
            Map<ThingId, Stated> planned,
            List<ThingId> removed,
            Problems problems,
            Nearest nearest) {
        this.found = found;
        this.planned = planned;
        this.removed = new HashSet<>(removed);
        this.problems = problems;
        this.nearest = nearest;
    }

    void check(List<Reference> references) {
        for (Reference reference : references) check(reference);
        new LoopCheck(found, planned, removed, problems).check();
    }

    private void check(Reference reference) {
        ReferTo refersTo = reference.field().refersTo();
        if (refersTo == null) throw new IllegalStateException(reference.field().path() + " names nothing");
        ThingId target = reference.target();
        String words = reference.field().words();
        if (SiteKeys.RESERVED.contains(target.text())) {
            if (!refersTo.allows(target))
                add(reference, ProblemKind.THING_NOT_HERE, words, target.text(), refersTo.allowed());
            return;
        }
        Stated named = found.getOrDefault(target, planned.get(target));
        if (target.equals(reference.owner())) {
            add(reference, ProblemKind.THING_ITSELF, words, target.text());
        } else if (named == null) {
            unknown(reference);
        } else if (!refersTo.allows(named.kind())) {
            add(
                    reference,
                    ProblemKind.THING_OF_OTHER_KIND,
                    words,
                    target.text(),
                    named.kind().section(),
                    refersTo.allowed());
        } else if (removed.contains(target) && refersTo != ReferTo.FOUND && holdsAfterPlan(reference)) {
            add(reference, ProblemKind.THING_REMOVED, words, target.text());
        }
    }

    /** Whether the reference still stands once the plan is carried out. */
    private boolean holdsAfterPlan(Reference reference) {
        ThingId owner = reference.owner();
        if (owner == null) return true;
        if (removed.contains(owner)) return false;
        if (reference.side() == Side.PLAN) return true;
        Stated restated = planned.get(owner);
        return restated == null || restated.thing().value(reference.path()) == null;
    }

    private void unknown(Reference reference) {
        if (names == null) {
            names = new TreeSet<>(List.of(ThingId.SUPPLY.text(), ThingId.MAIN_EARTH.text()));
            for (ThingId id : found.keySet()) names.add(id.text());
            for (ThingId id : planned.keySet()) names.add(id.text());
        }
        String near = nearest.of(reference.target().text(), names);
        String words = reference.field().words();
        if (near == null)
            add(reference, ProblemKind.THING_UNKNOWN, words, reference.target().text());
        else
            add(
                    reference,
                    ProblemKind.THING_UNKNOWN_NEAR,
                    words,
                    reference.target().text(),
                    near);
    }

    private void add(Reference reference, ProblemKind kind, String... arguments) {
        problems.add(reference.spot(), reference.where(), kind, arguments);
    }
}
