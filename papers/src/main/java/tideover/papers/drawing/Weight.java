package tideover.papers.drawing;

/** Weight and kind of a line. */
public enum Weight {
    /** Rulings. */
    FINE("e", 0.1, false),
    /** Frames, strokes on conductors. */
    HAIR("h", 0.2, false),
    /** Conductors and symbols. */
    NORMAL("n", 0.35, false),
    /** Conductors that have voltage in the state drawn. */
    STRONG("f", 0.7, false),
    /** Conductors without voltage in the state drawn. */
    DEAD("x", 0.25, true),
    /** Busbars. */
    BUS("b", 1.2, false),
    /** Links and outlines that are no conductor. */
    DASHED("o", 0.25, true);

    /** Dash and gap [mm]. */
    public static final double DASH = 1.3;

    private final String letter;
    private final double width;
    private final boolean dashed;

    Weight(String letter, double width, boolean dashed) {
        this.letter = letter;
        this.width = width;
        this.dashed = dashed;
    }

    /** Short name for classes in SVG. */
    String letter() {
        return letter;
    }

    /** Line width [mm]. */
    public double width() {
        return width;
    }

    public boolean isDashed() {
        return dashed;
    }
}
