package tideover.web.page;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A quantity asked for in the address of a page: zero or more, with a decimal point or comma.
 *
 * @param text  as it was typed; empty where nothing was
 * @param value nothing where the text is no such quantity
 */
public record TypedNumber(String text, @Nullable Number value) {
    private static final Pattern FORM = Pattern.compile("[0-9]{1,9}([.,][0-9]{0,9})?");

    /**
     * Reads what was typed.
     *
     * @param typed nothing where nothing was asked for
     * @param usual what is taken then
     */
    public static TypedNumber of(@Nullable String typed, double usual) {
        String text = typed == null ? "" : typed.strip();
        if (text.isEmpty()) return new TypedNumber("", usual);
        return new TypedNumber(text, FORM.matcher(text).matches() ? Double.valueOf(text.replace(',', '.')) : null);
    }

    /** Whether it can be worked with. */
    public boolean isKnown() {
        return value != null;
    }

    /** The value, or the usual one where the text is none. */
    public double or(double usual) {
        return value == null ? usual : value.doubleValue();
    }
}
