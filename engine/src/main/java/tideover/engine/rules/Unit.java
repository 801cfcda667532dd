package tideover.engine.rules;

/** Units of numbers in findings; the numbers are always in the unit itself, never in thousandths or thousands. */
public enum Unit {
    A,
    V,
    W,
    VA,
    WH,
    OHM,
    OHM_PER_KM,
    M,
    MM2,
    S,
    HZ,
    A2S,
    NM,
    BIT_PER_S,
    DEG_C,
    /** A residual current in ampere, printed in milliampere. */
    RESIDUAL_A,
    /** A share, printed in percent. */
    PERCENT,
    /** A plain factor. */
    RATIO,
    /** A number of things. */
    COUNT
}
