package tideover.engine.rules;

/** What came of a check at one place. */
public enum Outcome {
    MET,
    NOT_MET,
    /** A fact or a limit is missing. */
    OPEN,
    /** Inside the uncertainty of what was measured. */
    NOT_CERTAIN,
    NOT_APPLICABLE;

    /** Whether nothing is left to do. */
    public boolean isSettled() {
        return this == MET || this == NOT_APPLICABLE;
    }
}
