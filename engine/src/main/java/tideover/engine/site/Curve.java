package tideover.engine.site;

/** Instantaneous tripping of a circuit-breaker (IEC 60898-1: B, C, D; K and Z by IEC 60947-2 practice). */
public enum Curve {
    /** 3 to 5 times rated current. */
    B,
    /** 5 to 10 times. */
    C,
    /** 10 to 20 times. */
    D,
    /** 8 to 14 times. */
    K,
    /** 2 to 3 times. */
    Z
}
