package tideover.engine.site;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The lasting name of a thing in a site, apart from the printed designation, which may change.
 *
 * @param text lower-case letters, digits and hyphens, starting with a letter, at most 60 characters
 */
public record ThingId(String text) implements Comparable<ThingId> {

    private static final Pattern FORM = Pattern.compile("[a-z][a-z0-9-]{0,59}");

    /** The place of the house: country and position. */
    public static final ThingId PLACE = new ThingId("place");
    /** The grid operator and its conditions. */
    public static final ThingId GRID_OPERATOR = new ThingId("grid-operator");
    /** The grid connection point: the root from which everything is fed. */
    public static final ThingId SUPPLY = new ThingId("supply");
    /** The main earthing terminal of the house. */
    public static final ThingId MAIN_EARTH = new ThingId("main-earth");

    public ThingId {
        if (!isWellFormed(text))
            throw new IllegalArgumentException("thing id '%s' is not a-z, 0-9 and -".formatted(text));
    }

    /** Whether a text may serve as an id. */
    public static boolean isWellFormed(String text) {
        return FORM.matcher(text).matches();
    }

    @Override
    public int compareTo(ThingId other) {
        return text.compareTo(other.text);
    }

    // Written out because ids are keys everywhere: what the compiler makes for records is built anew at each start.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ThingId id && text.equals(id.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public String toString() {
        return text;
    }
}
