package tideover.web.edit;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tideover.engine.rules.PhraseArg;
import tideover.files.Edit;
import tideover.files.EditResult.Conflict;
import tideover.files.FieldTable;
import tideover.files.InputProblem;
import tideover.papers.Wording;
import tideover.store.Store;
import tideover.store.database.LogEntry;
import tideover.store.site.ChangeResult;
import tideover.store.site.Revision;
import tideover.store.site.RevisionId;
import tideover.web.edit.Outcome.Clash;
import tideover.web.edit.Outcome.Problem;
import tideover.web.page.NotHere;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Changes sites and words what came of it. */
@Component
public final class Editing {
    /** Who makes changes, as long as there is one person on one machine. */
    private static final String WHO = "workbench";

    private final Store store;
    private final Works works;
    private final Clock clock;
    private final FieldTable fields;

    Editing(Store store, Works works, Clock clock, FieldTable fields) {
        this.store = store;
        this.works = works;
        this.clock = clock;
        this.fields = fields;
    }

    /**
     * The site after a change, and what came of it.
     *
     * @param work the newest revision there is now, whether it was changed or not
     */
    public record Done(Work work, Outcome outcome) {}

    /** Changes what a person typed; all or nothing. */
    public Done type(Work work, long base, List<Typed> typed, Wording words) {
        return type(work, base, typed, Said.NOTHING, words);
    }

    /** The same, with who says so. */
    public Done type(Work work, long base, List<Typed> typed, Said said, Wording words) {
        List<Problem> problems = new ArrayList<>();
        List<Edit> edits = new ArrayList<>();
        TypedValues values = new TypedValues(fields, words, work.installation());
        for (Typed value : typed) values.read(value, edits, problems);
        if (!problems.isEmpty()) return new Done(work, new Outcome("", problems, List.of()));
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault());
        List<Edit> told = Provenance.with(edits, said, values);
        return change(work, base, Provenance.with(work.site(), told, values, today), typed, words);
    }

    /** Makes edits that are canonical already. */
    public Done change(Work work, long base, List<Edit> edits, Wording words) {
        return change(work, base, edits, List.of(), words);
    }

    private Done change(Work work, long base, List<Edit> edits, List<Typed> typed, Wording words) {
        if (edits.isEmpty()) return new Done(work, Outcome.NONE);
        return done(work, store.sites().change(work.row().id(), base, edits, entry()), typed, words);
    }

    /** Takes the last change back. */
    public Done undo(Work work, long base, Wording words) {
        return done(work, store.sites().undo(work.row().id(), base, entry()), List.of(), words);
    }

    /** Makes it anew. */
    public Done redo(Work work, long base, Wording words) {
        return done(work, store.sites().redo(work.row().id(), base, entry()), List.of(), words);
    }

    /** Makes the site what it was at an earlier revision. */
    public Done restore(Work work, long number, long base, Wording words) {
        if (number < 1 || number > work.row().head()) throw new NotHere("revision " + number);
        RevisionId wanted = new RevisionId(work.row().id(), number);
        return done(work, store.sites().restore(wanted, base, entry()), List.of(), words);
    }

    /** Who does something now, for whatever is kept. */
    public LogEntry entry() {
        return new LogEntry(WHO, clock.instant(), "");
    }

    private Done done(Work before, ChangeResult result, List<Typed> typed, Wording words) {
        if (result instanceof ChangeResult.Saved saved) return new Done(works.opened(saved.head()), Outcome.NONE);
        if (result instanceof ChangeResult.Unchanged) return new Done(before, Outcome.NONE);
        if (result instanceof ChangeResult.Refused refused) {
            List<Problem> problems = new ArrayList<>();
            TypedValues values = new TypedValues(fields, words, before.installation());
            for (InputProblem problem : refused.problems())
                problems.add(new Problem(
                        problem.field(),
                        words.text("edit.at", values.thing(problem.field()), words.of(problem.phrase())),
                        typedAt(problem.field(), typed)));
            return new Done(before, new Outcome("", problems, List.of()));
        }
        ChangeResult.Conflicting conflicting = (ChangeResult.Conflicting) result;
        Work now = works.opened(conflicting.head());
        EditWords values = new EditWords(fields, words, now.installation());
        List<Clash> clashes = new ArrayList<>();
        for (Conflict conflict : conflicting.conflicts())
            clashes.add(clash(conflict, conflicting.since(), typed, words, values));
        if (clashes.isEmpty())
            return new Done(now, new Outcome("", List.of(new Problem("", words.text("edit.newer"), "")), List.of()));
        return new Done(now, new Outcome("", List.of(), clashes));
    }

    private static Clash clash(
            Conflict conflict, List<Revision> since, List<Typed> typed, Wording words, EditWords values) {
        String path = conflict.edit().path();
        String wanted = typedAt(path, typed);
        if (wanted.isEmpty()) wanted = text(conflict.edit().after());
        String sentence = words.text(
                "edit.conflict",
                PhraseArg.verbatim(values.label(path)),
                PhraseArg.verbatim(values.value(path, conflict.now())),
                PhraseArg.verbatim(
                        since.isEmpty()
                                ? ""
                                : Long.toString(since.get(since.size() - 1).number())),
                PhraseArg.verbatim(wanted.isEmpty() ? words.text("edit.nothing") : wanted));
        return new Clash(path, sentence, text(conflict.now()), wanted);
    }

    private static String typedAt(String path, List<Typed> typed) {
        for (Typed value : typed)
            if (value.path().equals(path) || value.path().endsWith("." + path)) return value.typed();
        return "";
    }

    private static String text(@Nullable String value) {
        return Objects.requireNonNullElse(value, "");
    }
}
