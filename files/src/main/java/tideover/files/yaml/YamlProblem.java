package tideover.files.yaml;

import java.util.List;

/**
 * Why a file is no tree, or not a sound one.
 *
 * @param arguments what was found, what is allowed; as many as the kind says
 */
public record YamlProblem(Kind kind, Spot spot, List<String> arguments) {
    /** What may be wrong. */
    public enum Kind {
        /** Larger than allowed: the largest, in MiB. */
        TOO_LARGE(1),
        /** Nothing in it. */
        EMPTY(0),
        /** Another encoding than UTF-8: its name. */
        OTHER_ENCODING(1),
        /** A byte that UTF-8 does not know: its hexadecimal digits. */
        NOT_UTF8(1),
        /** A character no text has: its code. */
        CONTROL_CHARACTER(1),
        TAB(0),
        QUOTE_OPEN(0),
        BRACKET_OPEN(0),
        INDENTATION(0),
        /** A colon and a blank inside a value. */
        COLON(0),
        /** Something else where a value belongs: what was found. */
        VALUE_MISSING(1),
        /** A sign with which no value begins. */
        FIRST_SIGN(1),
        /** Anything else, in the words of the parser. */
        OTHER(1),
        /** A type tag. */
        TAG(1),
        /** A second document. */
        SECOND_DOCUMENT(0),
        KEY_IS_NO_TEXT(0),
        /** The key, and the line where it was first. */
        KEY_TWICE(2),
        ALIAS_UNKNOWN(1),
        ALIAS_IN_ITSELF(1),
        /** More values than allowed, aliases written out: the most allowed. */
        TOO_MANY_VALUES(1),
        /** Nested deeper than allowed: the deepest allowed. */
        TOO_DEEP(1);

        private final int arity;

        Kind(int arity) {
            this.arity = arity;
        }

        /** Number of arguments. */
        public int arity() {
            return arity;
        }
    }

    public YamlProblem {
        arguments = List.copyOf(arguments);
        if (arguments.size() != kind.arity)
            throw new IllegalArgumentException("%s takes %d arguments, not %s".formatted(kind, kind.arity, arguments));
    }

    static YamlProblem of(Kind kind, Spot spot, String... arguments) {
        return new YamlProblem(kind, spot, List.of(arguments));
    }
}
