package tideover.files.survey;

/** How sure a fact is. */
public enum Mark {
    KNOWN,
    ASSUMED,
    /** Nobody has said, and something waits for it. */
    MISSING,
    /** Nobody has said, and nothing waits for it. */
    NOT_ASKED
}
