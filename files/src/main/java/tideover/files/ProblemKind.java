package tideover.files;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.files.text.MessageKey;

/**
 * What may be wrong with a site file beyond its YAML. Each has a sentence in the bundle under {@link #key()}; the
 * comment tells what is filled into it.
 */
public enum ProblemKind {
    FILE_MISSING(1),
    FILE_IS_FOLDER(1),
    /** Neither file nor folder, such as a device. */
    FILE_IS_SPECIAL(1),
    FILE_NOT_ALLOWED(1),
    /** The file and the reason of the operating system. */
    FILE_UNREADABLE(2),

    FORMAT_MISSING(1),
    /** Found, known. */
    FORMAT_OTHER(2),
    /** Key, allowed keys. */
    KEY_UNKNOWN(2),
    /** Key, nearest key, allowed keys. */
    KEY_UNKNOWN_NEAR(3),
    /** Words and name of what is missing. */
    KEY_MISSING(2),
    /** What should have parts, what was found. */
    MAPPING_EXPECTED(2),
    /** What should be a list, what was found. */
    LIST_EXPECTED(2),
    /** What should be one value. */
    VALUE_EXPECTED(1),

    /** Label, found. */
    NUMBER_EXPECTED(2),
    /** Label, found, unit. */
    NUMBER_EXPECTED_IN(3),
    /** Label, found. */
    NUMBER_QUOTED(2),
    /** Label, found, with a point. */
    NUMBER_COMMA(3),
    /** Label, found. */
    NUMBER_NOT_FINITE(2),
    /** Label, found, lowest, highest. */
    NUMBER_RANGE(4),
    /** Label, found, lowest, highest, unit. */
    NUMBER_RANGE_IN(5),
    /** Label, found. */
    WHOLE_EXPECTED(2),
    /** Label, found. */
    YES_NO_EXPECTED(2),
    /** Label, found. */
    TEXT_EXPECTED(2),
    TEXT_EMPTY(1),
    /** Label, code of a character that cannot be printed. */
    TEXT_CHARACTER(2),
    /** Label, found and longest length in characters. */
    TEXT_TOO_LONG(3),
    /** Label, found, allowed words. */
    WORD_UNKNOWN(3),
    /** Label, found, nearest, allowed words. */
    WORD_UNKNOWN_NEAR(4),
    /** Label, found. */
    DATE_EXPECTED(2),
    COUNTRY_UNKNOWN(1),
    /** Found, nearest. */
    COUNTRY_UNKNOWN_NEAR(2),
    TIME_ZONE_UNKNOWN(1),
    /** Label, what is in the list twice. */
    LIST_TWICE(2),

    ID_FORM(1),
    ID_RESERVED(1),
    /** Id, line where it was first. */
    ID_TWICE(2),
    /** Id, its section where it is stated first, its section here. */
    KIND_CHANGED(3),
    /** Label, id. */
    THING_UNKNOWN(2),
    /** Label, id, nearest id. */
    THING_UNKNOWN_NEAR(3),
    /** Label, id, section of what it names, allowed sections. */
    THING_OF_OTHER_KIND(4),
    /** Label, id of something in every house, allowed sections. */
    THING_NOT_HERE(3),
    /** Label, id: the plan takes it out. */
    THING_REMOVED(2),
    /** Label, id: it was left out when the plan was carried out. */
    THING_LEFT_OUT(2),
    /** Label, id. */
    THING_ITSELF(2),
    /** Label, found. */
    TERMINAL_FORM(2),
    /** Label, terminal, its port, terminals of that port. */
    TERMINAL_UNKNOWN(4),
    /** The terminal that stands in both sets. */
    TERMINAL_TWICE(1),
    /** The way round. */
    LOOP_OF_LINES(1),
    LOOP_OF_NEUTRALS(1),

    NO_LINE(0),
    N_AND_PEN(0),
    PE_AND_PEN(0),

    CHECK_FORM(1),
    /** Found, allowed fields of that thing. */
    FACT_UNKNOWN(2),
    /** Found, nearest, allowed fields. */
    FACT_UNKNOWN_NEAR(3),
    /** What it is about, line where it was first. */
    EVIDENCE_TWICE(2),

    VARIANT_WITHOUT_FOLDER(0),
    VARIANT_OF_ITSELF(1),
    /** Longest chain. */
    VARIANT_CHAIN(1),
    FACT_FORM(1),
    /** What was to be changed. */
    EDIT_PATH(1);

    static final String PREFIX = "problem.";

    private final int arity;
    private final String key;

    ProblemKind(int arity) {
        this.arity = arity;
        this.key = MessageKey.of(PREFIX, this);
    }

    /** Number of places its sentence fills. */
    public int arity() {
        return arity;
    }

    /** Where its wording stands in the bundle. */
    public String key() {
        return key;
    }

    Phrase phrase(String... arguments) {
        if (arguments.length != arity)
            throw new IllegalArgumentException(
                    "%s takes %d arguments, not %d".formatted(this, arity, arguments.length));
        List<PhraseArg> verbatim = new ArrayList<>(arity);
        for (String argument : arguments) verbatim.add(PhraseArg.verbatim(argument));
        return new Phrase(key, verbatim);
    }
}
