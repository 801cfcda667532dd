package tideover.engine.site;

/** Parity bit of a serial character. */
public enum Parity {
    EVEN,
    ODD,
    NONE
}
