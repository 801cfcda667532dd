package tideover.engine.site;

/** What rectifies or converts inside a load, seen from its residual current. */
public enum Converter {
    /** No electronics that matter. */
    NONE,
    /** Single-phase frequency converter: composite currents. */
    SINGLE_PHASE,
    /** Can pass smooth d.c., such as a three-phase converter. */
    SMOOTH_DC
}
