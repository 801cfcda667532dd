package tideover.web.work;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import org.springframework.stereotype.Component;
import tideover.papers.Stamp;

/** What papers and drawings bear: what they were made from, and on which day. */
@Component
public final class Stamps {
    private final Clock clock;

    Stamps(Clock clock) {
        this.clock = clock;
    }

    /** The stamp of a revision, today. */
    public Stamp of(Work work) {
        return new Stamp(work.revision().digest(), LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault()));
    }
}
