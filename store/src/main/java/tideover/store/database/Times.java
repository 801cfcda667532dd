package tideover.store.database;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times as they stand in the database: UTC, to the millisecond, all of one length, so that they sort as texts. */
public final class Times {
    private static final DateTimeFormatter FORM = DateTimeFormatter.ofPattern(
                    "uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private Times() {}

    /** As it is written. */
    public static String text(Instant when) {
        return FORM.format(when);
    }

    /** As it is read. */
    public static Instant of(String text) {
        return Instant.parse(text);
    }
}
