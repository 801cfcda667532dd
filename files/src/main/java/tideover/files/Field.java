package tideover.files;

import org.jspecify.annotations.Nullable;
import tideover.engine.site.FactSource;

/**
 * One row of the field table, for one place in a site.
 *
 * @param path         such as {@code circuits.cable.lengthM}; begins with the section
 * @param kind         what it holds
 * @param unit         as printed; empty for a plain number and for what is no number
 * @param min          smallest number allowed, in that unit
 * @param max          largest number allowed
 * @param defaultValue filled in where the file says nothing; such a fact carries the origin ASSUMED
 * @param need         whether a file must state it
 * @param refersTo     what a reference may name; nothing for other kinds
 * @param source       how one gets the fact
 * @param words        short label
 * @param meaning      one sentence
 */
public record Field(
        String path,
        FieldKind kind,
        String unit,
        @Nullable Double min,
        @Nullable Double max,
        @Nullable String defaultValue,
        Need need,
        @Nullable ReferTo refersTo,
        FactSource source,
        String words,
        String meaning) {

    /** Whether a file must state a field. */
    public enum Need {
        NEEDED,
        /** Left out, it is a missing fact or takes its default. */
        OPTIONAL
    }

    /** Its name inside the group it belongs to. */
    public String name() {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** The same row at another path: rows for all kinds of thing are written once. */
    Field at(String otherPath) {
        return new Field(otherPath, kind, unit, min, max, defaultValue, need, refersTo, source, words, meaning);
    }
}
