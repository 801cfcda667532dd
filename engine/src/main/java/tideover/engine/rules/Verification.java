package tideover.engine.rules;

/** How far a limit was compared with what it cites. */
public enum Verification {
    /** Compared with the printed standard. */
    COMPARED,
    /** Seen in a public text. */
    SEEN,
    /** Follows from a formula. */
    CALCULATED,
    /** Common practice of the trade, without a source. */
    COMMON_PRACTICE,
    /** Known from the cited place, but not seen again. */
    FROM_MEMORY,
    /** Chosen by the authors of this program or by the user. */
    OWN_CHOICE,
    /** Sources disagree. */
    DISPUTED
}
