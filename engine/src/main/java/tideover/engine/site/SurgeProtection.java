package tideover.engine.site;

/** Surge protective device (IEC 61643-11). */
public enum SurgeProtection {
    NONE,
    TYPE_1_2,
    TYPE_2
}
