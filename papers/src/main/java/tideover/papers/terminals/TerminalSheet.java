package tideover.papers.terminals;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import tideover.engine.site.ThingId;
import tideover.papers.Wording;
import tideover.papers.drawing.DrawingStyle;
import tideover.papers.drawing.PagePen;
import tideover.papers.drawing.PdfPen;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.SvgPen;

/** One sheet of a terminal drawing. */
public final class TerminalSheet {

    private final Paper paper;
    private final String name;
    private final String title;
    private final Wording wording;
    private final Consumer<Pen> painter;

    TerminalSheet(Paper paper, String name, String title, Wording wording, Consumer<Pen> painter) {
        this.paper = paper;
        this.name = name;
        this.title = title;
        this.wording = wording;
        this.painter = painter;
    }

    /** Short name for files: lower-case letters, digits and hyphens. */
    public String name() {
        return name;
    }

    /** What is on it, in words. */
    public String title() {
        return title;
    }

    /** Whether it is higher than wide: a card on A4. */
    public boolean isUpright() {
        return paper.height() > paper.width();
    }

    /** Width of the sheet [mm]. */
    public double widthMm() {
        return paper.width();
    }

    /** Height of the sheet [mm]. */
    public double heightMm() {
        return paper.height();
    }

    /** The sheet as an SVG file that needs no other file. */
    public String svg() {
        SvgPen pen = new SvgPen();
        painter.accept(pen);
        return pen.finished(
                widthMm(), heightMm(), wording.locale().toLanguageTag(), title, wording.text("terminals.describe"));
    }

    /** The sheet for a page: the bare SVG element, which looks as {@link DrawingStyle#css} says. */
    public String pageSvg() {
        return pageSvg(thing -> Optional.empty());
    }

    /** The same with things that are links; where no address is given a thing is none. */
    public String pageSvg(Function<ThingId, Optional<String>> links) {
        PagePen pen = new PagePen(links);
        painter.accept(pen);
        return pen.element(widthMm(), heightMm(), wording.locale().toLanguageTag(), title);
    }

    /** Paints the sheet over what is on a page of a PDF document, beginning so far right [mm]. */
    public void paintOn(PDDocument document, PDPage page, double rightMm) {
        try (PdfPen pen = new PdfPen(document, page, rightMm)) {
            painter.accept(pen);
        }
    }
}
