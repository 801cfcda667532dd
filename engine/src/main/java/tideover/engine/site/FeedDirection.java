package tideover.engine.site;

/** From which side a protective device may be fed. */
public enum FeedDirection {
    /** From either side. */
    BIDIRECTIONAL,
    /** Only from the terminals marked for the supply. */
    LINE_SIDE_ONLY
}
