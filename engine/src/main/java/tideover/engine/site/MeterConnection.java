package tideover.engine.site;

/** How a meter sees the current. */
public enum MeterConnection {
    /** The current flows through it. */
    DIRECT,
    /** Through current transformers. */
    TRANSFORMERS
}
