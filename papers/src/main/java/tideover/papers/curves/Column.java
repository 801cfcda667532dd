package tideover.papers.curves;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Anchor;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/** The labels right of the scales, each tied to its curve by a hairline; none lies on another. */
final class Column {

    private static final double LEFT = Scales.RIGHT + 7;
    private static final double GAP = 2.2;

    /** Height of small letters, to bring the hairline to the middle of the first line. */
    private static final double MIDDLE = 0.9;

    private final double width;
    private final List<Label> labels = new ArrayList<>();

    private static final class Label {
        final Ink ink;
        /** Where its hairline begins [mm]; nothing for none. */
        final @Nullable Double x;
        /** The height it would like [mm]. */
        final double y;

        final List<String> head;
        final List<String> words;

        Label(Ink ink, @Nullable Double x, double y, List<String> head, List<String> words) {
            this.ink = ink;
            this.x = x;
            this.y = y;
            this.head = head;
            this.words = words;
        }
    }

    Column(double right) {
        width = right - LEFT;
    }

    /** A label for the point of a curve; {@code head} in bold, {@code words} below it or nothing. */
    void add(Ink ink, double x, double y, String head, String words) {
        labels.add(new Label(
                ink,
                x,
                y,
                Type.wrapped(Face.BOLD, Type.SIZE, head, width),
                words.isEmpty() ? List.of() : Type.wrapped(Face.REGULAR, Type.SIZE, words, width)));
    }

    /** Words without a curve, at the height they would like. */
    void note(double y, String words) {
        labels.add(new Label(Ink.BLACK, null, y, List.of(), Type.wrapped(Face.REGULAR, Type.SIZE, words, width)));
    }

    /** Draws all of them from above. */
    void paint(Pen pen) {
        labels.sort(Comparator.comparingDouble(label -> label.y));
        double y = Scales.TOP;
        for (Label label : labels) {
            y = Math.max(y, label.y + MIDDLE);
            if (label.x != null) tie(pen, label.ink, label.x, label.y, y - MIDDLE);
            y = lines(pen, label.ink, Face.BOLD, label.head, y);
            y = lines(pen, Ink.BLACK, Face.REGULAR, label.words, y);
            y += GAP;
        }
    }

    /** A dot on the curve and a hairline to the label. */
    private static void tie(Pen pen, Ink ink, double x, double y, double labelY) {
        double r = 0.65;
        pen.line(ink, Weight.HAIR, x, y, Scales.RIGHT + 1, y, LEFT - 1, labelY);
        pen.area(ink, x - r, y, x, y - r, x + r, y, x, y + r);
    }

    private static double lines(Pen pen, Ink ink, Face face, List<String> lines, double from) {
        double y = from;
        for (String line : lines) {
            pen.text(ink, face, Type.SIZE, Anchor.START, LEFT, y, line);
            y += Type.LEADING;
        }
        return y;
    }
}
