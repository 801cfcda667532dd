package tideover.web.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Force;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.FactSource;
import tideover.papers.OpenQuestions;
import tideover.papers.Wording;
import tideover.web.handover.HandoverSheet.Open;
import tideover.web.work.Work;

/** What is still open before anything is handed over, in sentences. */
final class OpenWords {
    private final Work work;
    private final Assessment assessment;
    private final Wording words;
    private final List<Open> all = new ArrayList<>();

    private OpenWords(Work work, Assessment assessment, Wording words) {
        this.work = work;
        this.assessment = assessment;
        this.words = words;
    }

    /** The gravest first; none where nothing is open. */
    static List<Open> of(Work work, Assessment assessment, Wording words) {
        OpenWords open = new OpenWords(work, assessment, words);
        open.findings("not-met", finding -> finding.isBlocking() && finding.outcome() == Outcome.NOT_MET);
        open.findings("not-certain", finding -> finding.isBlocking() && finding.outcome() == Outcome.NOT_CERTAIN);
        open.findings("open", finding -> finding.outcome() == Outcome.OPEN && finding.accepted() == null);
        open.operator();
        open.findings(
                "advice",
                finding -> finding.force() == Force.ADVISED
                        && !finding.outcome().isSettled()
                        && finding.outcome() != Outcome.OPEN
                        && finding.accepted() == null);
        open.assumptions();
        return open.all;
    }

    private void findings(String show, Predicate<Finding> which) {
        long count = assessment.findings().stream().filter(which).count();
        if (count > 0) add("handover.open." + show, (int) count, "/findings?show=" + show);
    }

    private void operator() {
        OpenQuestions questions = OpenQuestions.of(assessment.findings(), words);
        questions.errands().stream()
                .filter(errand -> errand.source() == FactSource.ASK_OPERATOR)
                .forEach(errand -> add("handover.open.operator", errand.facts().size(), "/findings?show=open"));
    }

    private void assumptions() {
        int count = (int) assessment.findings().stream()
                .flatMap(finding -> finding.assumptions().stream())
                .distinct()
                .count();
        if (count > 0) add("handover.open.assumptions", count, "/survey");
    }

    private void add(String key, int count, String page) {
        all.add(new Open(
                words.text(key, PhraseArg.count(count)), work.address() + page, words.text("handover.open.see")));
    }
}
