package tideover.papers.handover;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.jspecify.annotations.Nullable;
import tideover.engine.assessment.Assessment;
import tideover.engine.installation.Installation;
import tideover.engine.protection.selectivity.TimeCurrentPath;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Verification;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.curves.CurveSheet;
import tideover.papers.diagram.Diagram;
import tideover.papers.handover.CircuitList.Where;
import tideover.papers.terminals.TerminalDrawing;
import tideover.papers.wiring.Listing;

/**
 * The handover file of a site: verdict, cautions, open questions, diagram, time–current sheets, circuits, currents and faults
 * in both modes, wiring lists, terminal drawing, findings with their calculations, facts with their origin, assumptions, sources, and the letter to the grid
 * operator where there is something to ask.
 */
public final class Handover {

    private static final double POINTS_PER_MM = 72 / 25.4;

    /** Of A3 landscape, for which the template leaves pages free [mm]; larger drawings make the page larger. */
    private static final double SHEET_WIDTH_MM = 420;

    /** Two sheets of A4 upright lie side by side on A3. */
    private static final int CURVES_ON_PAGE = 2;

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
            List<String> sheets,
            List<String> curves,
            List<CircuitList.Part> circuits,
            List<ModePages.Mode> modes,
            List<String> flowHeads,
            List<String> faultHeads,
            List<ModePages.CircuitFlow> circuitFlows,
            List<FindingList.Section> sections,
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

    private final Assessment assessment;
    private final Wording wording;
    private final Stamp stamp;
    private final List<CurveSheet> curves;
    private final List<Listing> wiring;
    private final @Nullable TerminalPages terminals;
    private final FutureTask<Diagram> diagram;

    private Handover(
            Assessment assessment,
            Wording wording,
            Stamp stamp,
            List<CurveSheet> curves,
            List<Listing> wiring,
            @Nullable TerminalPages terminals) {
        this.assessment = assessment;
        this.wording = wording.with(assessment.installation());
        this.stamp = stamp;
        this.curves = List.copyOf(curves);
        this.wiring = List.copyOf(wiring);
        this.terminals = terminals;
        this.diagram = new FutureTask<>(() -> Diagram.of(assessment.installation(), this.wording, stamp));
    }

    /**
     * The handover file of a judged site.
     *
     * @param assessment with calculations, which are printed
     */
    public static Handover of(Assessment assessment, Wording wording, Stamp stamp) {
        return new Handover(assessment, wording, stamp, List.of(), List.of(), null);
    }

    /** The same with time–current sheets in it. */
    public Handover with(List<TimeCurrentPath> paths) {
        List<CurveSheet> sheets = new ArrayList<>();
        for (TimeCurrentPath path : paths) sheets.add(CurveSheet.of(path, assessment, wording, stamp));
        return new Handover(assessment, wording, stamp, sheets, wiring, terminals);
    }

    /** The same with wiring lists in it, as a chapter. */
    public Handover withWiring(List<Listing> listings) {
        return new Handover(assessment, wording, stamp, curves, listings, terminals);
    }

    /** The same with a terminal drawing behind the wiring lists. */
    public Handover with(TerminalDrawing drawing) {
        TerminalPages pages = drawing.sheets().isEmpty() ? null : new TerminalPages(drawing);
        return new Handover(assessment, wording, stamp, curves, wiring, pages);
    }

    /** The drawing in it, of no state yet. Laid out once. */
    public Diagram diagram() {
        try {
            diagram.run();
            return diagram.get();
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException("the diagram cannot be laid out", e);
        }
    }

    /** The paper as PDF; the same assessment and stamp give the same bytes. */
    public byte[] pdf() {
        Content content = content();
        String body = Template.in("handover.xhtml").fill(content, wording);
        if (!wiring.isEmpty()) body += WiringPages.body(wiring, wording);
        if (terminals != null) body += terminals.body(wording);
        body += Template.in("findings.xhtml").fill(content, wording);
        OperatorLetter letter = OperatorLetter.of(assessment, wording, stamp);
        if (letter.asks()) body += letter.body();
        List<Press.Bookmark> bookmarks = new ArrayList<>();
        for (Contents chapter : content.contents()) bookmarks.add(new Press.Bookmark(chapter.name(), chapter.id()));
        // From here on only the drawing asks the installation, which serves one thread at a time.
        Thread drawing = new Thread(diagram, "diagram");
        drawing.setDaemon(true);
        drawing.start();
        return new Press(wording.locale(), wording.text("handover.of", content.site()), stamp)
                .print(body, bookmarks, this::draw);
    }

    /** Draws on the pages left free: no others are as wide as the smallest sheet. */
    private void draw(PDDocument pdf) {
        Iterator<OperatingState> states = drawn().iterator();
        Iterator<CurveSheet> sheets = curves.iterator();
        int drawnTerminals = 0;
        for (PDPage page : pdf.getPages()) {
            if (page.getMediaBox().getWidth() < SHEET_WIDTH_MM * POINTS_PER_MM - 1) continue;
            if (!states.hasNext() && !sheets.hasNext()) {
                if (terminals != null) terminals.paint(pdf, page, drawnTerminals++);
                continue;
            }
            if (!states.hasNext()) {
                for (int side = 0; side < CURVES_ON_PAGE && sheets.hasNext(); side++)
                    sheets.next().paintOn(pdf, page, side * CurveSheet.WIDTH_MM);
                continue;
            }
            Diagram drawing = diagram().in(states.next());
            page.setMediaBox(new PDRectangle(
                    (float) (drawing.widthMm() * POINTS_PER_MM), (float) (drawing.heightMm() * POINTS_PER_MM)));
            drawing.paintOn(pdf, page);
        }
    }

    /** Ids of the pages with time–current sheets. */
    private List<String> curvePages() {
        List<String> pages = new ArrayList<>();
        for (int i = 0; i < curves.size(); i += CURVES_ON_PAGE) pages.add(i == 0 ? "curves" : "curves-" + i);
        return pages;
    }

    /** The states drawn: the two modes. */
    private List<OperatingState> drawn() {
        return assessment.installation().states().stream()
                .filter(state -> state == OperatingState.CONNECTED || state == OperatingState.ISLAND_GRID_DEAD)
                .toList();
    }

    private Content content() {
        Installation installation = assessment.installation();
        Questions questions = new Questions(assessment, wording);
        CircuitList circuits = new CircuitList(installation, wording);
        ModePages modes = new ModePages(assessment, wording, drawn());
        FindingList findings = new FindingList(assessment, wording);
        FactList facts = new FactList(installation, wording);
        Outcome outcome = assessment.verdict().outcome();
        List<String> sheets = new ArrayList<>();
        for (OperatingState state : drawn()) sheets.add(sheets.isEmpty() ? "diagram" : "diagram-" + state.ordinal());
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
                contents(questions, findings),
                questions.errands(),
                questions.topics(),
                wording.text("report.limits", PhraseArg.verbatim(rules()), PhraseArg.count(questions.openForLimits())),
                sheets,
                curvePages(),
                circuits.parts(),
                modes.modes(),
                modes.flowHeads(),
                modes.faultHeads(),
                modes.circuits(),
                findings.sections(),
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

    private List<Contents> contents(Questions questions, FindingList findings) {
        Map<Outcome, Integer> counts = assessment.verdict().counts();
        List<Contents> contents = new ArrayList<>();
        contents.add(chapter("verdict"));
        contents.add(chapter("questions", PhraseArg.count(counts.getOrDefault(Outcome.OPEN, 0))));
        contents.add(chapter("diagram"));
        if (!curves.isEmpty()) contents.add(chapter("curves", PhraseArg.count(curves.size())));
        contents.add(chapter(
                "circuits", PhraseArg.count(assessment.installation().circuits().size())));
        contents.add(chapter("network", PhraseArg.count(drawn().size())));
        if (!wiring.isEmpty())
            contents.add(chapter("wiring", PhraseArg.count((int)
                    wiring.stream().filter(listing -> listing.size() > 0).count())));
        if (terminals != null) contents.add(chapter("terminals", PhraseArg.count(terminals.size())));
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
            words.add(wording.text("handover.verification." + verification.name(), wording.heading(verification)));
        return words;
    }
}
