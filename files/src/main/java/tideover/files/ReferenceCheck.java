package tideover.files;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.BusPort;
import tideover.engine.site.Port;
import tideover.engine.site.ThingId;
import tideover.files.Reference.Side;
import tideover.files.Statements.Stated;
import tideover.files.text.Nearest;

/** Whether everything named exists, is of the kind that may be named there, and is still there once all is done. */
final class ReferenceCheck {
    private final Statements statements;
    private final Problems problems;
    private final Nearest nearest;
    private @Nullable Set<String> names;

    ReferenceCheck(Statements statements, Problems problems, Nearest nearest) {
        this.statements = statements;
        this.problems = problems;
        this.nearest = nearest;
    }

    void check(List<Reference> references) {
        for (Reference reference : references) check(reference);
        for (Side side : Side.values()) for (Stated stated : statements.of(side).values()) checkPassThrough(stated);
        new LoopCheck(statements, problems).check();
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
        Stated named = statements.first(target, Side.BUILT);
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
        } else {
            // The lists of what goes name what goes.
            Side removedBy = refersTo == ReferTo.LISTED ? null : statements.removedBy(target, Side.BUILT);
            if (removedBy != null && removedBy.compareTo(heldUntil(reference)) <= 0) {
                ProblemKind gone = removedBy == Side.PLAN ? ProblemKind.THING_REMOVED : ProblemKind.THING_LEFT_OUT;
                add(reference, gone, words, target.text());
            }
            checkTerminal(reference);
        }
    }

    /** The last side on which the reference stands as it does here: neither restated nor taken out with its owner. */
    private Side heldUntil(Reference reference) {
        ThingId owner = reference.owner();
        if (owner == null) return Side.BUILT;
        Side held = reference.side();
        Stated stating = statements.of(held).get(owner);
        for (Side later : Side.values()) {
            if (later.compareTo(held) <= 0) continue;
            Stated restated = statements.of(later).get(owner);
            // One that became another kind of thing is told elsewhere.
            if (restated != null
                            && stating != null
                            && stating.kind() == restated.kind()
                            && restated.thing().value(reference.topField()) != null
                    || statements.removedBy(owner, later) != null) break;
            held = later;
        }
        return held;
    }

    private void checkTerminal(Reference reference) {
        String name = reference.name();
        if (name == null) return;
        List<String> terminals = terminals(reference.target(), heldUntil(reference));
        if (terminals == null || terminals.contains(name)) return;
        add(
                reference,
                ProblemKind.TERMINAL_UNKNOWN,
                reference.field().words(),
                ValueReader.shortened(name),
                reference.target().text(),
                String.join(", ", terminals));
    }

    /** The terminals of a port, both sets, as a side leaves them; nothing where nobody has named them. */
    private @Nullable List<String> terminals(ThingId port, Side upTo) {
        List<String> terminals = null;
        List<String> onwards = null;
        for (Stated stated : statements.latestFirst(port, upTo)) {
            if (!(stated.thing() instanceof Port stating)) continue;
            if (terminals == null) terminals = stating.terminals();
            if (onwards == null && stating instanceof BusPort bus) onwards = bus.passThrough();
        }
        if (terminals == null || onwards == null) return terminals;
        return Stream.concat(terminals.stream(), onwards.stream()).toList();
    }

    /** The two sets of a bus port have names of their own, else a cable could not tell them apart. */
    private void checkPassThrough(Stated stated) {
        if (!(stated.thing() instanceof BusPort bus) || bus.terminals() == null || bus.passThrough() == null) return;
        for (String name : bus.passThrough())
            if (bus.terminals().contains(name))
                problems.add(
                        stated.spot("passThrough"),
                        bus.id() + ".passThrough",
                        ProblemKind.TERMINAL_TWICE,
                        ValueReader.shortened(name));
    }

    private void unknown(Reference reference) {
        if (names == null) {
            names = new TreeSet<>(List.of(ThingId.SUPPLY.text(), ThingId.MAIN_EARTH.text()));
            for (ThingId id : statements.ids(Side.BUILT)) names.add(id.text());
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
