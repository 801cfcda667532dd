package tideover.engine.rules;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

    /** What may stand at the end of an id, the longest that fits. */
    private static final Map<String, Unit> UNITS = Map.of(
            "A", Unit.A,
            "DegC", Unit.DEG_C,
            "M", Unit.M,
            "Ohm", Unit.OHM,
            "OhmPerKm", Unit.OHM_PER_KM,
            "S", Unit.S,
            "V", Unit.V,
            "Va", Unit.VA);

    private static final Pattern UNIT = Pattern.compile("[a-z](OhmPerKm|Ohm|DegC|Va|[AMSV])$");

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

    /** The unit of the number, as the end of the id names it; a plain factor where it names none, and for a choice. */
    public Unit unit() {
        Matcher end = UNIT.matcher(id);
        return number == null || !end.find() ? Unit.RATIO : UNITS.getOrDefault(end.group(1), Unit.RATIO);
    }

    /** Whether the limit is this choice. */
    public boolean is(Enum<?> wanted) {
        return wanted.name().equals(choice);
    }
}
