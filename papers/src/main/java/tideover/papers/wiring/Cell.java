package tideover.papers.wiring;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Unit;
import tideover.papers.Wording;

/**
 * One cell of a listing.
 *
 * @param text  as a person reads it; empty where there is nothing to say
 * @param value as a program reads it: a text, or a number in the unit its column names; nothing where it is not known
 */
public record Cell(String text, @Nullable Object value) {

    public static final Cell EMPTY = new Cell("", null);

    /** A text, the same for both. */
    public static Cell of(@Nullable String text) {
        return text == null || text.isEmpty() ? EMPTY : new Cell(text, text);
    }

    /** A word of the trade. */
    public static Cell of(Enum<?> word, Wording wording) {
        return new Cell(wording.word(word), word.name());
    }

    /** A whole number. */
    public static Cell of(int number) {
        return new Cell(String.valueOf(number), number);
    }

    /** A quantity; a question mark where it is not known. */
    public static Cell of(@Nullable Double value, Unit unit, Wording wording) {
        return value == null ? new Cell("?", null) : new Cell(wording.amount(value, unit), value);
    }

    /** A quantity; nothing where there is none. */
    static Cell ofKnown(@Nullable Double value, Unit unit, Wording wording) {
        return value == null ? EMPTY : of(value, unit, wording);
    }

    /** A text with what a program reads instead. */
    public static Cell of(String text, @Nullable Object value) {
        return new Cell(text, value);
    }

    /** What a program reads, as a text; empty where nothing is known. */
    public String data() {
        return Objects.toString(value, "");
    }
}
