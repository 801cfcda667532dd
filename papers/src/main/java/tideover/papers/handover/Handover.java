package tideover.papers.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import tideover.engine.assessment.Assessment;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Verification;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.diagram.Diagram;
import tideover.papers.handover.CircuitList.Where;

/**
 * The handover file of a site: verdict, cautions, open questions, diagram, circuits, findings with their calculations, facts
 * with their origin, assumptions, sources, and the letter to the grid operator where there is something to ask.
 */
public final class Handover {

    /** What the template shows; lists may be empty, and so may texts. */
    record Content(
            String site,
            String rules,
            String date,
            String revision,
            String digest,
            String verdict,
            String sign,
            String look,
            String counts,
            List<String> outage,
            List<String> cautions,
            List<Contents> contents,
            List<Questions.Errand> errands,
            List<String> topics,
            String topicsHeading,
            List<Sheet> sheets,
            List<CircuitList.Group> staying,
            List<CircuitList.Group> gridOnly,
            List<CircuitList.Group> unknown,
            List<FindingList.Row> notMet,
            List<FindingList.Row> notCertain,
            List<FindingList.Group> open,
            List<FindingList.Row> advice,
            List<FindingList.Group> met,
            List<FindingList.Group> notApplicable,
            List<FactList.ThingRow> things,
            List<FactList.EvidenceRow> evidence,
            String removed,
            List<FindingList.AssumptionRow> assumptions,
            List<FindingList.SourceRow> sources,
            List<String> verifications,
            String nothingOpen,
            String noAssumption) {}

    /** One chapter, with what is in it told in short. */
    record Contents(String id, String name, String about) {}

    /** Of the drawing [mm]. */
    record SheetSize(double width, double height) {}

    /** A page left free for a drawing. */
    record Sheet(String id, String name) {}

    private final Assessment assessment;
    private final Wording wording;
    private final Stamp stamp;

    private Handover(Assessment assessment, Wording wording, Stamp stamp) {
        this.assessment = assessment;
        this.wording = wording.with(assessment.installation());
        this.stamp = stamp;
    }

    /** @param assessment with calculations, which are printed */
    public static Handover of(Assessment assessment, Wording wording, Stamp stamp) {
        return new Handover(assessment, wording, stamp);
    }

    /** The paper as PDF; the same assessment and stamp give the same bytes. */
    public byte[] pdf() {
        Installation installation = assessment.installation();
        Diagram diagram = Diagram.of(installation, wording, stamp);
        List<Diagram> drawings = installation.states().stream()
                .filter(state -> state == OperatingState.CONNECTED || state == OperatingState.ISLAND_GRID_DEAD)
                .map(diagram::in)
                .toList();
        Content content = content(drawings);
        String body = Template.in("handover.xhtml").fill(content, wording);
        List<Press.Bookmark> bookmarks = new ArrayList<>();
        for (Contents chapter : content.contents()) bookmarks.add(new Press.Bookmark(chapter.name(), chapter.id()));
        OperatorLetter letter = OperatorLetter.of(assessment, wording, stamp);
        if (letter.asks()) body += letter.body();
        String sheet = Template.in("sheet.css").fill(new SheetSize(diagram.widthMm(), diagram.heightMm()), wording);
        Press press = new Press(wording.locale(), wording.text("handover.of", content.site()), stamp);
        return press.print(body, sheet, bookmarks, pdf -> draw(pdf, diagram, drawings));
    }

    /** Draws on the pages as wide as the drawing: there are no others. */
    private static void draw(PDDocument pdf, Diagram diagram, List<Diagram> drawings) {
        int next = 0;
        for (PDPage page : pdf.getPages()) {
            double widthMm = page.getMediaBox().getWidth() * 25.4 / 72;
            if (Math.abs(widthMm - diagram.widthMm()) < 1) drawings.get(next++).paintOn(pdf, page);
        }
        if (next != drawings.size())
            throw new IllegalStateException("%d pages for %d drawings".formatted(next, drawings.size()));
    }

    private Content content(List<Diagram> drawings) {
        Installation installation = assessment.installation();
        Questions questions = new Questions(assessment, wording);
        CircuitList circuits = new CircuitList(installation, wording);
        FindingList findings = new FindingList(assessment, wording);
        FactList facts = new FactList(installation, wording);
        Outcome outcome = assessment.verdict().outcome();
        List<Sheet> sheets = new ArrayList<>();
        for (Diagram drawing : drawings)
            sheets.add(new Sheet(sheets.isEmpty() ? "diagram" : "diagram-" + sheets.size(), drawing.title()));
        return new Content(
                wording.capitalised(wording.name(ThingId.PLACE)),
                rules(),
                stamp.date().toString(),
                stamp.revision().shortened(),
                stamp.revision().hex(),
                wording.of(assessment.verdict()),
                wording.sign(outcome),
                outcome == Outcome.MET ? "ok" : outcome == Outcome.NOT_MET ? "no" : "ask",
                wording.counts(assessment.verdict()),
                outage(circuits),
                Cautions.of(installation, wording),
                contents(questions, findings, circuits),
                questions.errands(),
                questions.topics(),
                wording.text("report.limits", PhraseArg.verbatim(rules()), PhraseArg.count(questions.openForLimits())),
                sheets,
                circuits.groups(Where.STAYS_ON),
                circuits.groups(Where.GRID_ONLY),
                circuits.groups(Where.UNKNOWN),
                findings.binding(Outcome.NOT_MET),
                findings.binding(Outcome.NOT_CERTAIN),
                findings.grouped(Outcome.OPEN),
                findings.advice(),
                findings.grouped(Outcome.MET),
                findings.grouped(Outcome.NOT_APPLICABLE),
                facts.things(),
                facts.evidence(),
                removed(installation),
                findings.assumptions(),
                findings.sources(),
                verifications(),
                questions.isEmpty() ? wording.text("handover.questions.none") : "",
                findings.assumptions().isEmpty() ? wording.text("handover.assumptions.none") : "");
    }

    /** The books laid over one another, the uppermost first. */
    private String rules() {
        List<String> layers = assessment.rules().layers();
        String rules = layers.get(0);
        for (String layer : layers.subList(1, layers.size())) rules = wording.text("handover.over", layer, rules);
        return rules;
    }

    /** What a customer can repeat: what goes on in an outage, and what does not. */
    private List<String> outage(CircuitList circuits) {
        List<String> sentences = new ArrayList<>();
        for (Where where : Where.values()) {
            List<String> names = circuits.names(where);
            if (!names.isEmpty())
                sentences.add(wording.text(
                        "handover.outage." + where.name(),
                        PhraseArg.count(names.size()),
                        PhraseArg.verbatim(wording.joined(names))));
        }
        return sentences;
    }

    private List<Contents> contents(Questions questions, FindingList findings, CircuitList circuits) {
        Map<Outcome, Integer> counts = assessment.verdict().counts();
        List<Contents> contents = new ArrayList<>();
        contents.add(chapter("verdict"));
        contents.add(chapter("questions", PhraseArg.count(counts.getOrDefault(Outcome.OPEN, 0))));
        contents.add(chapter("diagram"));
        contents.add(chapter(
                "circuits", PhraseArg.count(assessment.installation().circuits().size())));
        contents.add(chapter(
                "findings",
                PhraseArg.count(counts.getOrDefault(Outcome.NOT_MET, 0)),
                PhraseArg.count(assessment.findings().size())));
        contents.add(chapter("facts"));
        contents.add(
                chapter("assumptions", PhraseArg.count(findings.assumptions().size())));
        contents.add(chapter("sources", PhraseArg.count(findings.sources().size())));
        if (!questions.ofOperator().isEmpty()) contents.add(chapter("letter"));
        return contents;
    }

    private Contents chapter(String id, PhraseArg... about) {
        return new Contents(id, wording.text("handover." + id), wording.text("handover." + id + ".about", about));
    }

    private String removed(Installation installation) {
        List<ThingId> removed = installation.site().plan().removed();
        return removed.isEmpty() ? "" : wording.text("handover.removed", wording.names(removed));
    }

    private List<String> verifications() {
        List<String> words = new ArrayList<>();
        for (Verification verification : Verification.values())
            words.add(wording.text("handover.verification." + verification.name(), wording.word(verification)));
        return words;
    }
}
