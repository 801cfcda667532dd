package tideover.engine.protection;

/** Between which conductors a fault is. */
public enum FaultKind {
    /** A line and the protective conductor. */
    LINE_TO_EARTH,
    /** A line and the neutral. */
    LINE_TO_NEUTRAL,
    /** Two lines. */
    LINE_TO_LINE,
    /** All three lines. */
    THREE_LINES
}
