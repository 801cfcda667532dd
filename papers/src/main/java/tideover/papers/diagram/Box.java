package tideover.papers.diagram;

import java.util.List;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Type;

/** A thing on the sheet: how much room it takes, where its conductors enter and leave, and how it is painted. */
abstract class Box {

    private final double width;
    private final double height;
    private final double axis;

    /**
     * @param width  [mm]
     * @param height [mm]
     * @param axis   from the upper edge to the conductor that enters left and leaves right [mm]
     */
    Box(double width, double height, double axis) {
        this.width = width;
        this.height = height;
        this.axis = axis;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    double axis() {
        return axis;
    }

    /** Where conductors enter left, from the upper edge [mm]. */
    List<Double> inputs() {
        return List.of(axis);
    }

    /** Paints it with its upper left corner at a point. */
    abstract void paint(Pen pen, Look look, double x, double y);

    /** Lines of text downwards from a base line: the first ones bold. */
    static void lines(Pen pen, Ink ink, double x, double baseline, List<String> bold, List<String> regular) {
        double y = baseline;
        for (String line : bold) {
            pen.text(Ink.BLACK, Pen.Face.BOLD, Type.SIZE, Pen.Anchor.START, x, y, line);
            y += Type.LEADING;
        }
        for (String line : regular) {
            pen.text(ink, Pen.Face.REGULAR, Type.SIZE, Pen.Anchor.START, x, y, line);
            y += Type.LEADING;
        }
    }

    static double widest(Pen.Face face, List<String> lines) {
        return lines.stream()
                .mapToDouble(line -> Type.width(face, Type.SIZE, line))
                .max()
                .orElse(0);
    }
}
