package tideover.papers.handover;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.site.ThingId;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.terminals.TerminalDrawing;
import tideover.papers.terminals.TerminalSheet;

/** A terminal drawing as a paper of its own, each sheet on a page of its size: cards on A4, the whole on A3. */
public final class TerminalPaper {

    private final TerminalDrawing drawing;
    private final Wording wording;
    private final Stamp stamp;

    /**
     * Makes the paper.
     *
     * @param drawing has at least one sheet
     * @param wording knows the names of the site
     */
    public TerminalPaper(TerminalDrawing drawing, Wording wording, Stamp stamp) {
        this.drawing = drawing;
        this.wording = wording;
        this.stamp = stamp;
    }

    /** The paper as PDF; the same drawing and stamp give the same bytes. */
    public byte[] pdf() {
        List<String> ids = new ArrayList<>();
        List<Press.Bookmark> bookmarks = new ArrayList<>();
        for (TerminalSheet sheet : drawing.sheets()) {
            ids.add(sheet.name());
            bookmarks.add(new Press.Bookmark(sheet.title(), sheet.name()));
        }
        String site = wording.capitalised(wording.name(ThingId.PLACE));
        String body = Template.in("sheets.xhtml").fill(new TerminalPages.Content(ids), wording);
        return new Press(wording.locale(), wording.text("terminals.of", site), stamp)
                .print(body, bookmarks, pdf -> TerminalPages.paintSingly(drawing, pdf));
    }
}
