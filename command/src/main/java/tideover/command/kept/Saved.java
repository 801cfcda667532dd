package tideover.command.kept;

/**
 * What came of a change.
 *
 * @param kind     whether a revision was made
 * @param revision number of the newest one now
 * @param verdict  how the site is judged now, in words
 */
public record Saved(Kind kind, long revision, String verdict) {

    /** Whether there was something to do. */
    public enum Kind {
        SAVED,
        UNCHANGED
    }
}
