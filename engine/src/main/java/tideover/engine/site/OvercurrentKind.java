package tideover.engine.site;

/** Kind of overcurrent protective device. */
public enum OvercurrentKind {
    /** Circuit-breaker to IEC 60898-1. */
    MCB,
    /** Circuit-breaker to IEC 60947-2 with a declared curve. */
    CIRCUIT_BREAKER,
    /** Fuse gG to IEC 60269. */
    FUSE
}
