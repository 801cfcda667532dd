package tideover.engine.rules;

/** How binding a finding is. */
public enum Force {
    /** By law or standard. */
    REQUIRED,
    /** Good practice; may be accepted with a reason. */
    ADVISED,
    /** The grid operator demands it. */
    OPERATOR
}
