package tideover.papers.drawing;

import tideover.engine.site.ThingId;

/** Draws on a sheet. All lengths in millimetres; x to the right, y downwards from the upper left corner. */
public interface Pen {

    /** Where a text stands against its point. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** The two weights of the typeface. */
    enum Face {
        REGULAR,
        BOLD
    }

    /** What belongs together under one name; ends with {@link #end}. */
    void begin(String id, String title);

    /**
     * What belongs to one thing of the site; ends with {@link #end}.
     *
     * @param id tells the group apart from all others of the sheet
     */
    default void begin(String id, ThingId thing, String title) {
        begin(id, title);
    }

    /** Where the thing begun may be touched although nothing is drawn there; means nothing on paper. */
    default void reach(double x, double y, double width, double height) {}

    /** Ends what {@link #begin} began. */
    void end();

    /** A run of straight lines; {@code xy} are x and y in turn. */
    void line(Ink ink, Weight weight, double... xy);

    /** A filled polygon. */
    void area(Ink ink, double... xy);

    /** A polygon filled so lightly that what lies under it stays legible. */
    void wash(Ink ink, double... xy);

    /** A run of cubic Bézier curves: first point, then two control points and an end point each. */
    void curve(Ink ink, Weight weight, double... xy);

    /** One line of text; {@code size} is the size of the type, {@code y} its base line. */
    void text(Ink ink, Face face, double size, Anchor anchor, double x, double y, String text);

    /** An ellipse. */
    default void ellipse(Ink ink, Weight weight, double cx, double cy, double rx, double ry) {
        // Four Bézier quarters; the usual constant keeps the error below 0.03 % of the radius.
        double k = 0.5522847498;
        curve(
                ink,
                weight,
                cx + rx,
                cy,
                cx + rx,
                cy + k * ry,
                cx + k * rx,
                cy + ry,
                cx,
                cy + ry,
                cx - k * rx,
                cy + ry,
                cx - rx,
                cy + k * ry,
                cx - rx,
                cy,
                cx - rx,
                cy - k * ry,
                cx - k * rx,
                cy - ry,
                cx,
                cy - ry,
                cx + k * rx,
                cy - ry,
                cx + rx,
                cy - k * ry,
                cx + rx,
                cy);
    }

    /** The outline of a rectangle. */
    default void box(Ink ink, Weight weight, double x, double y, double width, double height) {
        line(ink, weight, x, y, x + width, y, x + width, y + height, x, y + height, x, y);
    }

    /** A filled rectangle. */
    default void fill(Ink ink, double x, double y, double width, double height) {
        area(ink, x, y, x + width, y, x + width, y + height, x, y + height);
    }

    /** A rectangle hatched from lower left to upper right, with its outline: the look of grid-only. */
    default void hatch(Ink ink, double x, double y, double width, double height, double pitch) {
        box(ink, Weight.HAIR, x, y, width, height);
        for (double c = pitch; c < width + height; c += pitch) {
            double x1 = Math.max(0, c - height);
            double x2 = Math.min(width, c);
            line(ink, Weight.NORMAL, x + x1, y + c - x1, x + x2, y + c - x2);
        }
    }
}
