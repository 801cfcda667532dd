package tideover.web.handover;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.stereotype.Component;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Outcome;
import tideover.engine.site.OperatingState;
import tideover.papers.Wording;
import tideover.web.diagram.StateLink;
import tideover.web.diagram.States;
import tideover.web.jobs.JobKind;
import tideover.web.jobs.JobViews;
import tideover.web.note.Margin.Pending;
import tideover.web.page.Stop;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Makes the sheet about what is handed over. */
@Component
final class HandoverSheets {
    /** As the paper calls its chapters, in its order. */
    private static final List<String> CHAPTERS = List.of(
            "verdict",
            "questions",
            "diagram",
            "curves",
            "circuits",
            "network",
            "wiring",
            "terminals",
            "findings",
            "facts",
            "assumptions",
            "sources",
            "letter");

    private final Works works;
    private final Frames frames;
    private final JobViews views;

    HandoverSheets(Works works, Frames frames, JobViews views) {
        this.works = works;
        this.frames = frames;
        this.views = views;
    }

    HandoverSheet of(Work work, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        Optional<Assessment> whole = works.whole(work);
        Assessment shown = whole.orElse(work.atOnce());
        Outcome outcome = shown.verdict().outcome();
        return new HandoverSheet(
                frames.of(request, words, work, Stop.HANDOVER),
                work.address(),
                words.of(shown.verdict()),
                words.sign(outcome),
                outcome.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                words.counts(shown.verdict()),
                pending(work, whole),
                OpenWords.of(work, shown, words),
                CHAPTERS.stream().map(id -> words.text("handover." + id)).toList(),
                views.newest(JobKind.PAPERS, work, words, request).orElse(null),
                files(work, words));
    }

    private Pending pending(Work work, Optional<Assessment> whole) {
        if (whole.isPresent()) return Pending.COMPLETE;
        return works.hasFailed(work) ? Pending.FAILED : Pending.COMPUTING;
    }

    private static List<StateLink> files(Work work, Wording words) {
        List<StateLink> files = new ArrayList<>();
        files.add(link(work, words.text("handover.file.findings"), "findings.json"));
        files.add(link(work, words.text("handover.file.site"), "site.json"));
        files.add(link(work, words.text("handover.file.yaml"), "site.yaml"));
        for (OperatingState state : work.installation().states())
            files.add(link(
                    work,
                    words.text("handover.file.diagram", words.word(state)),
                    "diagram.svg?state=" + States.path(state)));
        return files;
    }

    private static StateLink link(Work work, String what, String file) {
        return new StateLink(what, work.address() + "/" + file, "");
    }
}
