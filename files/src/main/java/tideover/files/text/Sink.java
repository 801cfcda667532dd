package tideover.files.text;

/** Where a site is written to, value by value. */
public interface Sink {
    /** How a mapping or list is laid out where the form has a choice. */
    enum Layout {
        /** A line for each part. */
        BLOCK,
        /** On one line. */
        LINE
    }

    void beginMapping(Layout layout);

    void endMapping();

    void beginList(Layout layout);

    void endList();

    void key(String key);

    void text(String text);

    /** A number, in its shortest form. */
    void number(String number);

    void yesNo(boolean value);
}
