package tideover.engine.rules;

/** How a rule book stands to a topic. */
public enum Stance {
    /** It has limits of its own; what it leaves out it takes from the book below. */
    OWN,
    /** It takes the topic from IEC as it stands. */
    AS_IEC,
    /** The grid operator decides. */
    ASK_OPERATOR,
    /** Nothing is known: findings of this topic stay open. */
    UNKNOWN
}
