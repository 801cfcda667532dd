package tideover.papers.diagram;

import java.util.List;
import tideover.papers.drawing.Pen;

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
}
