package tideover.papers.terminals;

import java.util.List;

/** A sheet of ISO 216 [mm]: A4 upright, larger ones landscape. */
enum Paper {
    A4(210, 297),
    A3(420, 297),
    A2(594, 420),
    A1(841, 594),
    A0(1189, 841);

    /** Left free for the binding [mm]. */
    static final double LEFT = 15;

    static final double MARGIN = 7;

    /** Height of the strip at the foot [mm]. */
    static final double STRIP = 25;

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    /** The smallest landscape sheet, A3 or larger, with this much room [mm]; text keeps its size. */
    static Paper fitting(double roomWidth, double roomHeight) {
        for (Paper paper : List.of(A3, A2, A1)) if (paper.holds(roomWidth, roomHeight)) return paper;
        return A0;
    }

    /** Whether there is this much room above the strip [mm]. */
    boolean holds(double roomWidth, double roomHeight) {
        return roomWidth <= right() - LEFT && roomHeight <= bottom() - MARGIN;
    }

    double right() {
        return width - MARGIN;
    }

    /** Where the strip begins, from the upper edge [mm]. */
    double bottom() {
        return height - MARGIN - STRIP;
    }
}
