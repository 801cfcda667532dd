package tideover.papers.wiring;

/**
 * One column of a listing.
 *
 * @param field   its name for programs, with the unit of its numbers; empty where only a person reads it
 * @param head    its heading; empty where only programs read it
 * @param width   its share of the width of a page; 0 where only programs read it
 * @param align   where its text stands
 */
public record Column(String field, String head, int width, Align align) {

    /** Where the text of a column stands. */
    public enum Align {
        LEFT,
        RIGHT
    }

    /** A column of words. */
    public static Column words(String field, String head, int width) {
        return new Column(field, head, width, Align.LEFT);
    }

    /** A column of numbers. */
    public static Column numbers(String field, String head, int width) {
        return new Column(field, head, width, Align.RIGHT);
    }

    /** A column for programs only. */
    public static Column data(String field) {
        return new Column(field, "", 0, Align.LEFT);
    }

    /** A column for persons only: what it tells stands in others for programs. */
    public static Column toRead(String head, int width) {
        return new Column("", head, width, Align.LEFT);
    }

    /** Whether a program reads it. */
    public boolean isData() {
        return !field.isEmpty();
    }

    /** Whether a person reads it. */
    public boolean isShown() {
        return width > 0;
    }
}
