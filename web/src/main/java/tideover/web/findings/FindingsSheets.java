package tideover.web.findings;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Outcome;
import tideover.papers.Wording;
import tideover.web.findings.FindingsSheet.Group;
import tideover.web.note.Margin.Pending;
import tideover.web.page.Stop;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Makes the sheet with all findings. */
@Component
final class FindingsSheets {
    static final String PAGE = "/findings";

    private final Works works;
    private final Frames frames;

    FindingsSheets(Works works, Frames frames) {
        this.works = works;
        this.frames = frames;
    }

    FindingsSheet of(Work work, Asked asked, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        Optional<Assessment> whole = works.whole(work);
        Assessment shown = whole.orElse(work.atOnce());
        Outcome outcome = shown.verdict().outcome();
        String here = work.address() + PAGE + asked.query();
        return new FindingsSheet(
                frames.of(request, words, work, Stop.FINDINGS),
                work.address(),
                here,
                work.revision().number(),
                words.of(shown.verdict()),
                words.sign(outcome),
                look(outcome),
                words.counts(shown.verdict()),
                new Filters(work, words).of(shown.findings(), asked),
                asked(asked, words),
                groups(work, shown.findings(), asked, words),
                pending(work, whole));
    }

    Pending pending(Work work, Optional<Assessment> whole) {
        if (whole.isPresent()) return Pending.COMPLETE;
        return works.hasFailed(work) ? Pending.FAILED : Pending.COMPUTING;
    }

    static String look(Outcome outcome) {
        return outcome.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static List<Group> groups(Work work, List<Finding> findings, Asked asked, Wording words) {
        Map<Shown, List<Finding>> groups = new EnumMap<>(Shown.class);
        for (Finding finding : findings)
            if (asked.concerns(finding))
                groups.computeIfAbsent(Shown.of(finding), group -> new ArrayList<>())
                        .add(finding);
        Rows rows = new Rows(work, words);
        List<Group> all = new ArrayList<>();
        groups.forEach((group, of) -> {
            if (asked.show() != null && asked.show() != group) return;
            Group empty = empty(work, group, of.size(), asked, words);
            if (group == Shown.OPEN) all.add(rows.open(empty, of));
            else if (empty.more().isEmpty()) all.add(filled(empty, rows.rows(of)));
            else all.add(empty);
        });
        return all;
    }

    private static Group empty(Work work, Shown group, int count, Asked asked, Wording words) {
        boolean onRequest = group.isSettled() && asked.show() == null && asked.place() == null;
        return new Group(
                group.path(),
                group.look(),
                heading(group, words),
                count,
                words.text("findings.about." + group.path()),
                List.of(),
                List.of(),
                "",
                List.of(),
                onRequest ? work.address() + PAGE + asked.with(group).query() : "");
    }

    private static Group filled(Group empty, List<FindingsSheet.Row> rows) {
        return new Group(
                empty.id(),
                empty.look(),
                empty.heading(),
                empty.count(),
                empty.about(),
                rows,
                List.of(),
                "",
                List.of(),
                "");
    }

    static String heading(Shown group, Wording words) {
        return group.isOutcome() ? words.outcome(group.outcome()) : words.text("findings.group." + group.path());
    }

    private static String asked(Asked asked, Wording words) {
        if (asked.isAll()) return "";
        List<String> parts = new ArrayList<>();
        if (asked.show() != null) parts.add(heading(asked.show(), words));
        if (asked.force() != null) parts.add(words.word(asked.force()));
        if (asked.topic() != null) parts.add(words.word(asked.topic()));
        if (asked.place() != null) parts.add(words.name(asked.place()));
        return words.text("findings.asked", String.join(" · ", parts));
    }
}
