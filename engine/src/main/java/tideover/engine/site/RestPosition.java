package tideover.engine.site;

/** Where a switch comes to rest when its control supply is lost. */
public enum RestPosition {
    OPEN,
    CLOSED,
    /** Stays in the position it had. */
    AS_IT_WAS
}
