package tideover.engine.network;

/** How many conductors of a circuit carry its current and warm the cable (IEC 60364-5-52, 523.6). */
public enum LoadedConductors {
    /** Line and neutral. */
    TWO,
    /** Three lines, the neutral idle because they balance. */
    THREE
}
