package tideover.engine.protection;

/** Which disconnection time holds for a circuit (IEC 60364-4-41, 411.3.2). */
public enum CircuitRole {
    /** Final circuit within the ratings of 411.3.2.2. */
    FINAL,
    /** Distribution circuit, or final circuit above those ratings. */
    DISTRIBUTION
}
