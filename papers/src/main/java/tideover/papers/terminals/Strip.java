package tideover.papers.terminals;

import java.util.List;
import tideover.engine.site.ThingId;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Anchor;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/** Frame of a sheet with the strip at its foot: warning left, title block right (fields after ISO 7200). */
final class Strip {

    private static final double TITLE = 88;
    private static final double INSIDE = 3;

    private final Wording wording;
    private final Stamp stamp;

    Strip(Wording wording, Stamp stamp) {
        this.wording = wording;
        this.stamp = stamp;
    }

    /** @param number of this sheet, counted from 1 */
    void paint(Pen pen, Paper paper, String title, int number, int count) {
        double top = paper.bottom();
        double middle = paper.right() - TITLE;
        pen.box(
                Ink.BLACK,
                Weight.NORMAL,
                Paper.LEFT,
                Paper.MARGIN,
                paper.right() - Paper.LEFT,
                paper.height() - 2 * Paper.MARGIN);
        pen.line(Ink.BLACK, Weight.NORMAL, Paper.LEFT, top, paper.right(), top);
        pen.line(Ink.BLACK, Weight.NORMAL, middle, top, middle, top + Paper.STRIP);
        double y = lines(
                pen,
                Ink.STOP,
                Face.BOLD,
                wording.text("terminals.caution"),
                Paper.LEFT + INSIDE,
                top + 4.6,
                middle - Paper.LEFT - 2 * INSIDE);
        lines(
                pen,
                Ink.BLACK,
                Face.REGULAR,
                wording.text("terminals.how"),
                Paper.LEFT + INSIDE,
                y + 0.6,
                middle - Paper.LEFT - 2 * INSIDE);
        double x = middle + INSIDE;
        double width = TITLE - 2 * INSIDE;
        String site = wording.capitalised(wording.name(ThingId.PLACE));
        pen.text(Ink.BLACK, Face.BOLD, 4, Anchor.START, x, top + 5.6, Type.fitted(Face.BOLD, 4, site, width));
        pen.text(Ink.BLACK, Face.BOLD, 3.4, Anchor.START, x, top + 10.6, Type.fitted(Face.BOLD, 3.4, title, width));
        pen.text(
                Ink.BLACK,
                Face.REGULAR,
                Type.SIZE,
                Anchor.START,
                x,
                top + 16.4,
                wording.text("diagram.revision", stamp.revision().shortened()));
        pen.text(
                Ink.BLACK,
                Face.REGULAR,
                Type.SIZE,
                Anchor.START,
                x,
                top + 21.4,
                wording.text("diagram.date", stamp.date().toString()));
        double end = paper.right() - INSIDE;
        pen.text(
                Ink.BLACK,
                Face.BOLD,
                Type.SIZE,
                Anchor.END,
                end,
                top + 16.4,
                wording.text("terminals.sheet", String.valueOf(number), String.valueOf(count)));
        pen.text(
                Ink.BLACK,
                Face.REGULAR,
                Type.SIZE,
                Anchor.END,
                end,
                top + 21.4,
                wording.text("diagram.sheet", paper.name()));
    }

    private static double lines(Pen pen, Ink ink, Face face, String text, double x, double top, double width) {
        double y = top;
        List<String> lines = Type.wrapped(face, Type.SIZE, text, width);
        for (String line : lines) {
            pen.text(ink, face, Type.SIZE, Anchor.START, x, y, line);
            y += Type.LEADING;
        }
        return y;
    }
}
