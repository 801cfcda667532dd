package tideover.files.text;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.io.NumberOutput;

/** Numbers as text. */
public final class Numbers {
    /** From here on, and below its counterpart, RFC 8785 writes an exponent. */
    private static final double LARGEST_PLAIN = 1e21;

    private static final double SMALLEST_PLAIN = 1e-6;

    private Numbers() {}

    /**
     * A decimal number of YAML's core schema (YAML 1.2.2, 10.3.2); JSON's are among them.
     *
     * @return nothing where the text is no number; infinity where it is too large for a double
     */
    public static @Nullable Double parse(String text) {
        int at = 0;
        int end = text.length();
        if (at < end && (text.charAt(at) == '-' || text.charAt(at) == '+')) at++;
        int whole = digits(text, at);
        at += whole;
        int fraction = 0;
        if (at < end && text.charAt(at) == '.') {
            fraction = digits(text, at + 1);
            at += 1 + fraction;
        }
        if (whole + fraction == 0) return null;
        if (at < end && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            at++;
            if (at < end && (text.charAt(at) == '-' || text.charAt(at) == '+')) at++;
            int exponent = digits(text, at);
            if (exponent == 0) return null;
            at += exponent;
        }
        // Adding zero turns -0 into 0: two spellings of one site would otherwise have two digests.
        return at == end ? Double.parseDouble(text) + 0.0 : null;
    }

    private static int digits(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') at++;
        return at - from;
    }

    /** Whether the text is one of the core schema's words for what is no finite number. */
    public static boolean isNotFinite(String text) {
        String word = text.startsWith("-") || text.startsWith("+") ? text.substring(1) : text;
        return switch (word) {
            case ".inf", ".Inf", ".INF", ".nan", ".NaN", ".NAN", "NaN", "Infinity" -> true;
            default -> false;
        };
    }

    /**
     * The shortest text that reads back as the same number, in the form of RFC 8785 (but for the very smallest number,
     * 4.9e-324, where that writes one digit). The same on every Java version: {@code Double.toString} before Java 19 is
     * not always shortest.
     */
    public static String shortest(double value) {
        if (value == 0) return "0";
        String text = NumberOutput.toString(value, true);
        double size = Math.abs(value);
        if (size >= SMALLEST_PLAIN && size < LARGEST_PLAIN) {
            if (text.indexOf('E') < 0) return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
            return new BigDecimal(text).stripTrailingZeros().toPlainString();
        }
        int e = text.indexOf('E');
        String digits = text.substring(0, e);
        if (digits.endsWith(".0")) digits = digits.substring(0, digits.length() - 2);
        String exponent = text.substring(e + 1);
        return digits + "e" + (exponent.startsWith("-") ? "" : "+") + exponent;
    }
}
