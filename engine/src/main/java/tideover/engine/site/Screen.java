package tideover.engine.site;

/** Where the screen of a control cable is earthed. */
public enum Screen {
    /** There is none. */
    NONE,
    /** Not earthed anywhere. */
    FLOATING,
    ONE_END,
    BOTH_ENDS
}
