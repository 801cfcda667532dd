package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * One fact of one thing, written {@code thing.field}, for example {@code oven.cable.lengthM}.
 *
 * @param thing whose fact
 * @param field path of the field inside the thing, parts joined by dots
 */
public record FactId(ThingId thing, String field) {

    /** Reads {@code thing.field}; everything behind the first dot is the field. */
    public static FactId of(String text) {
        int dot = text.indexOf('.');
        if (dot < 1 || dot == text.length() - 1)
            throw new IllegalArgumentException("fact '%s' is not written thing.field".formatted(text));
        return new FactId(new ThingId(text.substring(0, dot)), text.substring(dot + 1));
    }

    // Written out because facts are compared everywhere: what the compiler makes for records is built anew at each
    // start.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof FactId id && field.equals(id.field) && thing.equals(id.thing);
    }

    @Override
    public int hashCode() {
        return 31 * thing.hashCode() + field.hashCode();
    }

    @Override
    public String toString() {
        return thing.text() + "." + field;
    }
}
