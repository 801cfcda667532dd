package tideover.engine.protection;

/** What one row of a tripping table says about a time at a current. */
public enum Guarantee {
    /** The device has opened within the time. */
    WITHIN,
    /** The device stays closed for the time. */
    NOT_WITHIN
}
