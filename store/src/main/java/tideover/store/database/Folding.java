package tideover.store.database;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Texts as they are searched: neither case nor accents count, and that in the same way on every database. */
public final class Folding {
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    private Folding() {}

    /** The text without case, accents and more than one blank in a row. */
    public static String fold(String text) {
        String plain =
                MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
        // Up first: only so does ß meet ss.
        String folded = plain.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
        return BLANKS.matcher(folded).replaceAll(" ").strip();
    }
}
