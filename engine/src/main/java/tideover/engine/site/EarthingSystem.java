package tideover.engine.site;

/** How neutral and exposed parts are connected to earth (IEC 60364-1, 312.2). */
public enum EarthingSystem {
    /** Neutral and protective conductor separate from the source on. */
    TN_S,
    /** PEN up to a point in the house, then N and PE. */
    TN_C_S,
    /** PEN throughout. */
    TN_C,
    /** Exposed parts on an electrode of their own. */
    TT,
    /** No conductor of the source earthed, or only through an impedance. */
    IT
}
