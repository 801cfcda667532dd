package tideover.web.api;

import java.time.Clock;
import org.springframework.stereotype.Component;
import tideover.store.database.LogEntry;

/** Who does what programs ask for. */
@Component
final class Programs {
    private static final String WHO = "program";

    private final Clock clock;

    Programs(Clock clock) {
        this.clock = clock;
    }

    LogEntry entry(String note) {
        return new LogEntry(WHO, clock.instant(), note);
    }
}
