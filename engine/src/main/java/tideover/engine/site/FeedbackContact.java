package tideover.engine.site;

/** What tells the control where the main contacts are. */
public enum FeedbackContact {
    /** Mirror contact of a contactor (IEC 60947-4-1, Annex F). */
    MIRROR,
    /** Positively driven position indication of a motor switch. */
    POSITIVELY_DRIVEN,
    /** An ordinary auxiliary contact: proves nothing. */
    ORDINARY,
    /** No feedback. */
    NONE
}
