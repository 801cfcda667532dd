package tideover.engine.site;

/** Which earth an electrode belongs to. */
public enum EarthPlace {
    /** Connected to the main earthing terminal. */
    MAIN_EARTH,
    /** An earth of its own. */
    SEPARATE
}
