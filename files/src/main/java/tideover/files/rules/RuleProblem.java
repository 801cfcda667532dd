package tideover.files.rules;

import tideover.files.text.MessageKey;

/**
 * What may be wrong with a rule book beyond its YAML. Each has a sentence in the bundle under {@link #key()}; the comment
 * tells what is filled into it.
 */
public enum RuleProblem {
    /** The file. */
    FILE_UNREADABLE(1),
    /** A book is a mapping. */
    BOOK_FORM(0),
    TOPICS_FORM(0),
    LIMITS_FORM(0),
    LIMIT_FORM(0),
    /** The key that needs one text. */
    TEXT_FORM(1),
    /** Key, allowed keys. */
    KEY_UNKNOWN(2),
    /** Key, nearest, allowed keys. */
    KEY_UNKNOWN_NEAR(3),
    /** The key. */
    KEY_MISSING(1),
    /** Found, allowed words. */
    WORD_UNKNOWN(2),
    /** Found, nearest, allowed words. */
    WORD_UNKNOWN_NEAR(3),
    /** Found. */
    NUMBER_FORM(1),
    /** Book, topics it does not declare. */
    TOPICS_UNDECLARED(2),
    /** Limit. */
    LIMIT_UNKNOWN(1),
    /** Limit, nearest. */
    LIMIT_UNKNOWN_NEAR(2),
    /** Limit. */
    LIMIT_TWICE(1),
    /** Limit, its topic, how the book stands to that. */
    LIMIT_UNCOVERED(3),
    /** Book, the one it is made for, the one that holds here. */
    OVER_OTHER(3);

    private final int arity;
    private final String key;

    RuleProblem(int arity) {
        this.arity = arity;
        this.key = MessageKey.of("problem.rules.", this);
    }

    /** Number of places its sentence fills. */
    public int arity() {
        return arity;
    }

    /** Where its wording stands in the bundle. */
    public String key() {
        return key;
    }
}
