package tideover.papers.handover;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import tideover.papers.Wording;
import tideover.papers.terminals.TerminalDrawing;
import tideover.papers.terminals.TerminalSheet;

/** A terminal drawing on pages of A3: the whole cabinet sheet by sheet, then the cards, two of A4 side by side. */
final class TerminalPages {

    private static final double POINTS_PER_MM = 72 / 25.4;

    /** What the template shows. */
    record Content(List<String> ids) {}

    private final List<List<TerminalSheet>> pages = new ArrayList<>();

    TerminalPages(TerminalDrawing drawing) {
        for (TerminalSheet sheet : drawing.sheets()) {
            List<TerminalSheet> last = pages.isEmpty() ? List.of() : pages.get(pages.size() - 1);
            boolean beside =
                    sheet.isUpright() && last.size() == 1 && last.get(0).isUpright();
            if (beside) last.add(sheet);
            else pages.add(new ArrayList<>(List.of(sheet)));
        }
    }

    int size() {
        return pages.size();
    }

    /** Pages left free, to be drawn on. */
    String body(Wording wording) {
        List<String> ids = new ArrayList<>();
        for (int page = 0; page < pages.size(); page++) ids.add(page == 0 ? "terminals" : "terminals-" + page);
        return Template.in("sheets.xhtml").fill(new Content(ids), wording);
    }

    /** Draws one page. */
    void paint(PDDocument pdf, PDPage page, int index) {
        List<TerminalSheet> sheets = pages.get(index);
        if (sheets.size() == 1 && !sheets.get(0).isUpright()) page.setMediaBox(box(sheets.get(0)));
        double right = 0;
        for (TerminalSheet sheet : sheets) {
            sheet.paintOn(pdf, page, right);
            right += sheet.widthMm();
        }
    }

    private static PDRectangle box(TerminalSheet sheet) {
        return new PDRectangle((float) (sheet.widthMm() * POINTS_PER_MM), (float) (sheet.heightMm() * POINTS_PER_MM));
    }

    /** Draws each sheet on a page of its own size. */
    static void paintSingly(TerminalDrawing drawing, PDDocument pdf) {
        int index = 0;
        for (PDPage page : pdf.getPages()) {
            TerminalSheet sheet = drawing.sheets().get(index++);
            page.setMediaBox(box(sheet));
            sheet.paintOn(pdf, page, 0);
        }
    }
}
