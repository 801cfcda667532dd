package tideover.papers.diagram;

import tideover.papers.drawing.Ink;

/** Which side of the double line. */
enum Side {
    /** Behind an islanding switch: above the line. */
    ISLAND(Ink.ISLAND),
    /** Not behind one: below the line. */
    GRID(Ink.GRID);

    private final Ink ink;

    Side(Ink ink) {
        this.ink = ink;
    }

    Ink ink() {
        return ink;
    }
}
