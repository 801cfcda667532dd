package tideover.engine.site;

/** How a motor is started. */
public enum StartKind {
    /** No motor. */
    NONE,
    /** Direct on line. */
    DIRECT,
    STAR_DELTA,
    /** Soft starter. */
    SOFT,
    /** Frequency converter. */
    INVERTER
}
