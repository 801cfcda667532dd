package tideover.engine.site;

/** Whether an RCD waits for those behind it. */
public enum RcdDelay {
    /** No intentional delay. */
    GENERAL,
    /** Type S. */
    SELECTIVE
}
