package tideover.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Force;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Topic;
import tideover.engine.site.FactId;
import tideover.engine.site.ThingId;

/** The findings of a site as plain text, for the screen of a command line. */
public final class CheckReport {

    private static final String INDENT = "    ";

    private final Wording wording;
    private final Assessment assessment;
    private Paragraphs text = new Paragraphs();

    /**
     * @param wording    its names are taken from the assessment's installation
     * @param assessment with calculations where they are to be shown
     */
    public CheckReport(Wording wording, Assessment assessment) {
        this.wording = wording.with(assessment.installation());
        this.assessment = assessment;
    }

    /** The whole report, lines of at most 98 columns, ending with a line break. */
    public String text() {
        text = new Paragraphs();
        line("", wording.text("report.head", PhraseArg.name(ThingId.PLACE), PhraseArg.verbatim(books())));
        line("", wording.of(assessment.verdict()) + " " + wording.counts(assessment.verdict()));
        section(Outcome.NOT_MET, f -> f.outcome() == Outcome.NOT_MET && f.force() != Force.ADVISED);
        section(Outcome.NOT_CERTAIN, f -> f.outcome() == Outcome.NOT_CERTAIN && f.force() != Force.ADVISED);
        openSection();
        adviceSection();
        if (!assessment.calculations().isEmpty()) section(Outcome.MET, f -> f.outcome() == Outcome.MET);
        assumptions();
        text.gap();
        line("", wording.text("caution.defer"));
        return text.toString();
    }

    private String books() {
        return String.join(" < ", assessment.rules().layers());
    }

    private void section(Outcome outcome, Predicate<Finding> of) {
        List<Finding> findings = assessment.findings().stream().filter(of).toList();
        if (findings.isEmpty()) return;
        heading(wording.outcome(outcome), findings.size());
        for (Finding finding : findings) finding(finding);
    }

    private void adviceSection() {
        List<Finding> findings = assessment.findings().stream()
                .filter(f -> f.force() == Force.ADVISED && !f.outcome().isSettled() && f.outcome() != Outcome.OPEN)
                .toList();
        if (findings.isEmpty()) return;
        heading(wording.text("report.advice"), findings.size());
        for (Finding finding : findings) finding(finding);
    }

    /** What is missing comes before the findings that wait for it: that is what one can do. */
    private void openSection() {
        List<Finding> findings = assessment.findings().stream()
                .filter(f -> f.outcome() == Outcome.OPEN)
                .toList();
        if (findings.isEmpty()) return;
        heading(wording.outcome(Outcome.OPEN), findings.size());
        OpenQuestions questions = OpenQuestions.of(findings, wording);
        for (OpenQuestions.Errand errand : questions.errands()) {
            line(
                    "  ",
                    wording.text("report.errand", PhraseArg.word(errand.source()), PhraseArg.count(errand.answers())));
            List<String> facts = new ArrayList<>();
            for (FactId fact : errand.facts()) facts.add(wording.fact(fact));
            for (String fact : facts) line(INDENT, "· " + fact);
        }
        if (!questions.limits().isEmpty()) {
            line(
                    "  ",
                    wording.text(
                            "report.limits", PhraseArg.verbatim(books()), PhraseArg.count(questions.openForLimits())));
            for (Topic topic : questions.topics()) line(INDENT, "· " + wording.word(topic));
            line(INDENT, wording.text("report.limits.how"));
        }
        if (!assessment.calculations().isEmpty()) for (Finding finding : findings) finding(finding);
    }

    private void assumptions() {
        List<FactId> assumed = assessment.findings().stream()
                .flatMap(finding -> finding.assumptions().stream())
                .distinct()
                .sorted((a, b) -> a.toString().compareTo(b.toString()))
                .toList();
        if (assumed.isEmpty()) return;
        heading(wording.text("report.assumptions"), assumed.size());
        for (FactId fact : assumed) line("  ", "· " + wording.fact(fact));
    }

    private void heading(String words, int count) {
        text.gap();
        line("", words + " (" + count + ")");
    }

    private void finding(Finding finding) {
        String state = finding.key().state() == null
                ? ""
                : " · " + wording.word(finding.key().state());
        line(
                "  ",
                wording.sign(finding.outcome()) + " "
                        + wording.name(finding.key().place()) + state + "  ["
                        + finding.key().check() + "]");
        line(INDENT, wording.of(finding));
        if (finding.measure() != null && finding.outcome() != Outcome.MET) line(INDENT, wording.of(finding.measure()));
        if (finding.source() != null) line(INDENT, wording.of(finding.source()));
        if (finding.accepted() != null)
            line(INDENT, wording.text("report.accepted", PhraseArg.verbatim(finding.accepted())));
        for (Phrase step : assessment.calculations().getOrDefault(finding.key(), List.of()))
            line(INDENT + "= ", wording.of(step));
    }

    private void line(String indent, String paragraph) {
        text.add(indent, paragraph);
    }
}
