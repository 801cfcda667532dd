package tideover.papers.drawing;

/** What a colour means. Each also shows without colour: by weight, dashes, hatch or words. */
public enum Ink {
    /** Facts and frames. */
    BLACK("k", "ink", 0x1d2327),
    /** What stays on: the island side. */
    ISLAND("i", "island", 0x0f4c5c),
    /** What is grid-only: the grid side. */
    GRID("g", "grid", 0x8a4b08),
    /** What the program notes: missing facts. */
    PENCIL("p", "pencil", 0x3a5a9b),
    /** Danger. */
    STOP("s", "stop", 0x9b1c31),
    /** Without voltage in the state drawn. */
    DEAD("d", "dead", 0x7b8288),
    /** Rulings to read values by. */
    RULE("r", "rule", 0xc9c2b0);

    private final String letter;
    private final String property;
    private final int rgb;

    Ink(String letter, String property, int rgb) {
        this.letter = letter;
        this.property = property;
        this.rgb = rgb;
    }

    /** Short name for classes in SVG. */
    String letter() {
        return letter;
    }

    /** Name of the CSS property by which a page gives it another colour. */
    String property() {
        return "--td-" + property;
    }

    /** Red, green and blue, eight bits each. */
    int rgb() {
        return rgb;
    }
}
