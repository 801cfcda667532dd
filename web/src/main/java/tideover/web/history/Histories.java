package tideover.web.history;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.PhraseArg;
import tideover.files.Edit;
import tideover.files.FieldTable;
import tideover.papers.Wording;
import tideover.store.Store;
import tideover.store.site.Revision;
import tideover.store.site.RevisionId;
import tideover.store.site.Steps;
import tideover.web.edit.EditWords;
import tideover.web.history.History.Aside;
import tideover.web.history.History.Change;
import tideover.web.history.History.Row;
import tideover.web.note.Margins;
import tideover.web.note.Note;
import tideover.web.page.NotHere;
import tideover.web.work.Frames;
import tideover.web.work.Work;

/** Makes pages about revisions. */
@Component
final class Histories {
    private static final int ROWS = 50;
    private static final int CHANGES = 8;
    private static final String EVIDENCE = "evidence.";

    private final Store store;
    private final FieldTable fields;
    private final Frames frames;

    Histories(Store store, FieldTable fields, Frames frames) {
        this.store = store;
        this.fields = fields;
        this.frames = frames;
    }

    /** @param before number of the first revision that is not shown any more; 0 for the newest ones */
    History of(Work work, long before, tideover.web.edit.Outcome last, HttpServletRequest request) {
        Wording words = words(work, request);
        EditWords edits = new EditWords(fields, words, work.installation());
        List<Revision> all = store.sites().revisions(work.row().id());
        int end = (int) (before > 0 ? Math.min(before - 1, all.size()) : all.size());
        int begin = Math.max(0, end - ROWS);
        List<Row> rows = new ArrayList<>();
        for (int i = end - 1; i >= begin; i--) rows.add(row(all.get(i), edits, words));
        Steps steps = store.sites().steps(work.row().id());
        return new History(
                frames.beside(request, words, work, words.text("history.title")),
                work.address(),
                work.revision().number(),
                rows,
                begin > 0 ? "%s/history?before=%d".formatted(work.address(), begin + 1) : "",
                step(steps.undo(), edits, words),
                step(steps.redo(), edits, words),
                numbers(work),
                last);
    }

    private static List<Long> numbers(Work work) {
        long head = work.row().head();
        return LongStream.rangeClosed(1, head).mapToObj(n -> head + 1 - n).toList();
    }

    /** What a step back or forth would do, in short. */
    private static String step(@Nullable Revision revision, EditWords edits, Wording words) {
        if (revision == null) return "";
        if (revision.edits().isEmpty())
            return words.text("history.kind." + revision.kind(), "", Long.toString(revision.number()));
        Edit first = revision.edits().get(0);
        String change = words.text(
                "history.change",
                edits.label(first),
                edits.value(first.path(), first.before()),
                edits.value(first.path(), first.after()));
        long others = revision.edits().stream()
                        .filter(edit -> !edit.path().startsWith(EVIDENCE))
                        .count()
                - 1;
        return others > 0 ? words.text("edit.more", PhraseArg.verbatim(change), PhraseArg.count((int) others)) : change;
    }

    private static Row row(Revision revision, EditWords edits, Wording words) {
        List<Change> changes = new ArrayList<>();
        for (Edit edit : revision.edits()) if (changes.size() < CHANGES) changes.add(change(edit, edits));
        int more = revision.edits().size() - changes.size();
        String of = revision.contentOf() == null ? "" : Long.toString(revision.contentOf());
        return new Row(
                revision.number(),
                words.text("history.kind." + revision.kind(), of),
                Frames.when(revision.entry().when(), words.locale()),
                revision.entry().who(),
                changes,
                more == 0 ? "" : words.text("history.more", PhraseArg.count(more)));
    }

    private static Change change(Edit edit, EditWords edits) {
        return new Change(
                edits.label(edit),
                edits.value(edit.path(), edit.before()),
                edits.value(edit.path(), edit.after()),
                edit.path().startsWith(EVIDENCE) ? Aside.PROVENANCE : Aside.FACT);
    }

    Difference difference(Work work, long from, long to, HttpServletRequest request) {
        Wording words = words(work, request);
        return new Difference(
                frames.beside(request, words, work, words.text("history.difference")),
                work.address(),
                from,
                to,
                changes(work, from, to, words),
                numbers(work));
    }

    private List<Change> changes(Work work, long from, long to, Wording words) {
        long head = work.row().head();
        if (from < 1 || to < 1 || from > head || to > head) throw new NotHere("revision %d or %d".formatted(from, to));
        EditWords edits = new EditWords(fields, words, work.installation());
        return store
                .sites()
                .difference(
                        new RevisionId(work.row().id(), from),
                        new RevisionId(work.row().id(), to))
                .stream()
                .map(edit -> change(edit, edits))
                .toList();
    }

    /** A revision as it was, judged by today's rules. */
    Earlier earlier(Work now, Work then, HttpServletRequest request) {
        Wording words = frames.words(request).with(then.installation());
        Assessment judged = then.atOnce();
        Margins margins = new Margins(then, words);
        List<Note> notes = judged.findings().stream()
                .filter(finding -> finding.isBlocking() && finding.outcome() != Outcome.OPEN)
                .map(margins::note)
                .toList();
        Outcome outcome = judged.verdict().outcome();
        String title =
                words.text("frame.revision", Long.toString(then.revision().number()));
        return new Earlier(
                frames.beside(request, words, now, title),
                now.address(),
                now.revision().number(),
                row(then.revision(), new EditWords(fields, words, then.installation()), words),
                outcome.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                words.outcome(outcome),
                words.of(judged.verdict()),
                words.counts(judged.verdict()),
                notes,
                changes(now, then.revision().number(), now.revision().number(), words(now, request)));
    }

    private Wording words(Work work, HttpServletRequest request) {
        return frames.words(request).with(work.installation());
    }
}
