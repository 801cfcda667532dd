package tideover.store.database;

import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.regex.Pattern;

/** Names that no one can guess and no two machines draw alike. */
public final class Ids {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final Pattern FORM = Pattern.compile("[0-9a-f]{16}");

    private Ids() {}

    /** A name not used before: 16 hexadecimal digits. */
    public static String fresh() {
        byte[] bytes = new byte[8];
        RANDOM.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    /** Whether a text may be such a name. */
    public static boolean isWellFormed(String text) {
        return FORM.matcher(text).matches();
    }

    /**
     * Refuses what cannot be such a name.
     *
     * @throws IllegalArgumentException with the text
     */
    public static void require(String text) {
        if (!isWellFormed(text))
            throw new IllegalArgumentException("id '%s' is not 16 hexadecimal digits".formatted(text));
    }
}
