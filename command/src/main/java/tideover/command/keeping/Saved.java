package tideover.command.keeping;

/**
 * What came of a change.
 *
 * @param kind     whether a revision was made
 * @param revision number of the newest one now
 * @param verdict  how the site is judged now, in words
 */
record Saved(Kind kind, long revision, String verdict) {

    /** Whether there was something to do. */
    enum Kind {
        SAVED,
        UNCHANGED
    }
}
