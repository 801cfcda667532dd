package tideover.engine.site;

/** What becomes of a thing; follows from where it is stated. */
public enum Status {
    /** Found and left. */
    EXISTING,
    /** Found and changed by the plan. */
    ALTERED,
    /** Only in the plan. */
    NEW,
    /** Found and taken out. */
    REMOVED
}
