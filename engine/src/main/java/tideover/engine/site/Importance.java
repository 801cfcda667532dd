package tideover.engine.site;

/** What the customer says of a circuit in an outage. */
public enum Importance {
    MUST_RUN,
    IMPORTANT,
    /** Would be nice. */
    NICE,
    CAN_WAIT
}
