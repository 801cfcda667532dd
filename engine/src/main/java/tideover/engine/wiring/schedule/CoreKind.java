package tideover.engine.wiring.schedule;

/** What a core of the control wiring is. */
public enum CoreKind {
    /** Joins two devices. */
    CORE,
    /** Joins two terminals of one device. */
    BRIDGE,
    /** Lies in the cable and is not connected. */
    SPARE,
    /** One of its ends is stated and the other is not, or an end is at a port that does not exist. */
    LOOSE,
    /** The screen around the cores. */
    SCREEN
}
