package tideover.engine.site;

/** What a following inverter does when the frequency rises because the island has more power than it takes up. */
public enum FrequencyResponse {
    /** Feeds on until its protection against overfrequency switches it off. */
    NONE,
    /** Reduces its power as the frequency rises. */
    THROTTLES
}
