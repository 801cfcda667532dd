package tideover.papers.diagram;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import tideover.engine.installation.Installation;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.drawing.DrawingStyle;
import tideover.papers.drawing.PagePen;
import tideover.papers.drawing.PdfPen;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.SvgPen;

/**
 * The one-line diagram of an installation, of no state or in one operating state. Laid out once, painted as often as
 * wanted; the same input gives the same bytes.
 */
public final class Diagram {

    private final Installation installation;
    private final Labels labels;
    private final Stamp stamp;
    private final Sheet sheet;
    private final Optional<OperatingState> state;

    private Diagram(
            Installation installation, Labels labels, Stamp stamp, Sheet sheet, Optional<OperatingState> state) {
        this.installation = installation;
        this.labels = labels;
        this.stamp = stamp;
        this.sheet = sheet;
        this.state = state;
    }

    /** Lays out the diagram; no state is shown, driven contacts are drawn open. */
    public static Diagram of(Installation installation, Wording wording, Stamp stamp) {
        Labels labels = new Labels(wording, installation);
        return new Diagram(installation, labels, stamp, Sheet.of(installation, labels), Optional.empty());
    }

    /** The same drawing in an operating state: what has voltage is strong, contacts stand in their position. */
    public Diagram in(OperatingState shown) {
        return new Diagram(installation, labels, stamp, sheet, Optional.of(shown));
    }

    /** The same drawing, laid out anew, with a short note in pencil at each thing: what flows there, say. */
    public Diagram with(Map<ThingId, String> notes) {
        Labels noted = labels.with(notes);
        return new Diagram(installation, noted, stamp, Sheet.of(installation, noted), state);
    }

    /** Width of the sheet [mm]; 420 for A3. */
    public double widthMm() {
        return sheet.format().width;
    }

    /** Height of the sheet [mm]; 297 for A3. */
    public double heightMm() {
        return sheet.format().height;
    }

    /** What is shown, in words: site, drawing and state. */
    public String title() {
        String shown =
                state.map(s -> labels.text("diagram.state", labels.word(s))).orElse(labels.text("diagram.state.none"));
        return labels.text("diagram.full", labels.name(ThingId.PLACE), labels.text("diagram.title"), shown);
    }

    /** The drawing as an SVG file that needs no other file. */
    public String svg() {
        SvgPen pen = new SvgPen();
        paint(pen);
        return pen.finished(
                widthMm(),
                heightMm(),
                labels.wording().locale().toLanguageTag(),
                title(),
                labels.text("diagram.describe"));
    }

    /** The drawing for a page: the bare SVG element, which looks as {@link DrawingStyle#css} says. */
    public String pageSvg() {
        return pageSvg(thing -> Optional.empty());
    }

    /** The same with things that are links; where no address is given a thing is none. */
    public String pageSvg(Function<ThingId, Optional<String>> links) {
        PagePen pen = new PagePen(links);
        paint(pen);
        return pen.element(widthMm(), heightMm(), labels.wording().locale().toLanguageTag(), title());
    }

    /**
     * Paints the drawing over what is on a page of a PDF document, its upper left corner on that of the page, which is to
     * be as large as the sheet.
     */
    public void paintOn(PDDocument document, PDPage page) {
        try (PdfPen pen = new PdfPen(document, page)) {
            paint(pen);
        }
    }

    /** The sheet it is laid out on. */
    Sheet sheet() {
        return sheet;
    }

    /** Paints the sheet. */
    void paint(Pen pen) {
        Look look = state.map(s -> Look.in(installation, s)).orElse(Look.ofNoState(installation));
        sheet.paint(pen, look, labels);
        new Strip(pen, labels, sheet.format()).paint(installation, state, stamp, sheet.format());
    }
}
