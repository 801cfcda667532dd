package tideover.files.cells;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.files.InputProblem;
import tideover.files.text.MessageKey;

/**
 * What may be wrong with what was typed into a cell, or with a list of circuits. Each has a sentence in the bundle under
 * {@link #key()}; the comment tells what is filled into it.
 */
public enum CellProblem {
    /** Label, typed, example. */
    NUMBER(3),
    /** Label, typed, the same without separators. */
    THOUSANDS(3),
    /** Label, typed, both readings. */
    TWO_READINGS(4),
    /** Label, typed, what stands behind the number, units that can. */
    UNIT(4),
    /** Label, typed. */
    NO_UNIT(2),
    /** Label, typed. */
    WHOLE(2),
    /** Label, typed, words for yes and no. */
    YES_NO(4),
    /** Label, typed, allowed words. */
    WORD(3),
    /** Label, typed, nearest, allowed words. */
    WORD_NEAR(4),
    /** Label, typed. */
    DATE(2),
    /** Label, typed. */
    THING(2),
    /** Label, typed, nearest name. */
    THING_NEAR(3),
    /** Label, typed, ids of those that bear the name. */
    THING_TWICE(3),
    /** Label, typed. */
    OVERCURRENT_DEVICE(2),
    /** Label, typed. */
    RESIDUAL_DEVICE(2),
    /** Label, typed. */
    CABLE(2),
    /** Label, typed, conductors counted in it, conductors stated. */
    CABLE_COUNT(4),
    /** Label, typed. */
    GROUP(2),
    /** Label, typed. */
    TOO_LONG(2),

    LIST_TOO_LARGE(1),
    /** Rows, most rows. */
    LIST_TOO_LONG(2),
    LIST_EMPTY(0),
    LIST_ENCODING(0),
    /** Text behind a quotation mark, or one that is never closed. */
    LIST_QUOTE(0),
    LIST_WITHOUT_ID(0),
    /** Column, allowed columns. */
    COLUMN_UNKNOWN(2),
    /** Column, nearest, allowed columns. */
    COLUMN_UNKNOWN_NEAR(3),
    COLUMN_TWICE(1),
    /** Column of a group, a column inside it. */
    COLUMN_INSIDE(2),
    /** Cells of the row, columns of the header. */
    ROW_TOO_LONG(2),
    /** An id that would do. */
    ROW_WITHOUT_ID(1),
    ROW_ID_FORM(1),
    /** Id, line where it was first. */
    ROW_TWICE(2),
    /** Id of something else. */
    ROW_OF_OTHER_KIND(1),
    /** Id of a circuit that is not among those listed. */
    ROW_NOT_LISTED(1);

    private final int arity;
    private final String key;

    CellProblem(int arity) {
        this.arity = arity;
        this.key = MessageKey.of("cell.", this);
    }

    /** Number of places its sentence fills. */
    public int arity() {
        return arity;
    }

    /** Where its wording stands in the bundle. */
    public String key() {
        return key;
    }

    /** A problem of a file as a whole, or of one cell of it. */
    InputProblem at(String file, int line, int column, String field, String... arguments) {
        if (arguments.length != arity)
            throw new IllegalArgumentException(
                    "%s takes %d arguments, not %d".formatted(this, arity, arguments.length));
        List<PhraseArg> verbatim = new ArrayList<>(arity);
        for (String argument : arguments) verbatim.add(PhraseArg.verbatim(argument));
        return new InputProblem(file, line, column, field, new Phrase(key, verbatim));
    }
}
