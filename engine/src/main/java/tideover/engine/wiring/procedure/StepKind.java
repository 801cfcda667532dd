package tideover.engine.wiring.procedure;

/** Kinds of commissioning step, in their order. */
public enum StepKind {
    INSPECTION,
    DEAD,
    SWITCHING,
    LIVE
}
