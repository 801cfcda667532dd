package tideover.engine.site;

/** What residual currents an RCD sees (IEC 61008-1, IEC 62423). */
public enum RcdType {
    /** Sinusoidal only. */
    AC,
    /** And pulsating d.c. */
    A,
    /** And composite currents of single-phase converters. */
    F,
    /** And smooth d.c. */
    B
}
