package tideover.files;

/** What a field holds. */
public enum FieldKind {
    /** The lasting name of the thing itself. */
    ID,
    TEXT,
    TEXTS,
    /** A number with the unit of the field's name. */
    NUMBER,
    /** A whole number. */
    WHOLE,
    /** {@code true} or {@code false}. */
    YES_NO,
    /** One of a fixed list of words in capitals. */
    WORD,
    WORDS,
    /** A day, ISO 8601. */
    DATE,
    /** The id of another thing. */
    REFERENCE,
    REFERENCES,
    /** A control terminal of a port, written {@code port/terminal}. */
    TERMINAL,
    /** Fields of its own. */
    GROUP,
    /** A list of such. */
    GROUPS;

    /** Whether several stand in a list. */
    public boolean isList() {
        return this == TEXTS || this == WORDS || this == REFERENCES || this == GROUPS;
    }
}
