package tideover.engine.starting;

/** Which end of what is not known is counted on. */
public enum Bound {
    /** Largest multiple, longest start, no overload but what is stated. */
    WORST,
    /** Smallest multiple, shortest start, any overload where nobody has stated it. */
    BEST
}
