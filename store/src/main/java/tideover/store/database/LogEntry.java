package tideover.store.database;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * Who does something, when, and what they say to it; never told by the store itself.
 *
 * @param who  as the person is called on paper
 * @param when kept to the millisecond
 * @param note empty where nothing was said
 */
public record LogEntry(String who, Instant when, String note) {
    public LogEntry {
        when = when.truncatedTo(ChronoUnit.MILLIS);
    }

    /** An entry without a note. */
    public static LogEntry of(String who, Instant when) {
        return new LogEntry(who, when, "");
    }
}
