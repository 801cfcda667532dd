package tideover.engine.site;

/** What makes an isolation. */
public enum IsolatorKind {
    SWITCH_DISCONNECTOR,
    CIRCUIT_BREAKER,
    FUSE_DISCONNECTOR,
    /** Plug or connector. */
    PLUG,
    /** A contactor is no isolator. */
    CONTACTOR
}
