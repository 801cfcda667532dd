package tideover.engine.wiring.mistake;

/** Why a mistake changes nothing that can be read. */
public enum Unseen {
    /** What it joins or parts is one net anyway. */
    SAME_NET,
    /** The two ends of a coil or contact may be exchanged. */
    EITHER_WAY,
    /** Order in a series loop. */
    SERIES_ORDER,
    /** The control supply is not earthed: a first connection to earth does nothing. */
    NOT_EARTHED,
    /** The sequence of the lines stays, and all lines are alike. */
    SAME_SEQUENCE,
    /** The neutral is joined to earth there in any case, or its load finds the same way. */
    NO_DIFFERENCE
}
