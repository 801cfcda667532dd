package tideover.engine.site;

/** Insulation of a cable; its name stands for the highest conductor temperature. */
public enum Insulation {
    /** Thermoplastic, 70 °C. */
    PVC,
    /** Cross-linked polyethylene or EPR, 90 °C. */
    XLPE
}
