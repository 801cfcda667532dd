package tideover.engine.site;

/** Whether a circuit may stay on in island mode. */
public enum StayOn {
    MUST,
    MAY,
    NEVER
}
