package tideover.engine.rules;

import org.jspecify.annotations.Nullable;

/**
 * One limit of a rule book: a number with its unit, or a choice written in capitals.
 *
 * @param id     such as {@code rcd.touchVoltageV}; begins with the word of its topic
 * @param number the number, in the unit of the id's suffix; nothing for a choice
 * @param choice the choice; nothing for a number
 * @param force  how binding it is
 * @param source where it stands
 * @param book   rule book it was taken from
 * @param note   remark for the reader
 */
public record Limit(
        String id,
        @Nullable Double number,
        @Nullable String choice,
        Force force,
        Source source,
        String book,
        @Nullable String note) {

    public Limit {
        if ((number == null) == (choice == null))
            throw new IllegalArgumentException("limit %s needs a number or a choice".formatted(id));
        if (number != null && !Double.isFinite(number))
            throw new IllegalArgumentException("limit %s is %s".formatted(id, number));
    }

    /** The number. @throws IllegalStateException if this limit is a choice */
    public double requireNumber() {
        if (number == null)
            throw new IllegalStateException("limit %s of %s is a choice, no number".formatted(id, book));
        return number;
    }

    /** Whether the limit is this choice. */
    public boolean is(Enum<?> wanted) {
        return wanted.name().equals(choice);
    }
}
