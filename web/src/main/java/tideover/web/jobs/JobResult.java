package tideover.web.jobs;

import java.util.List;
import tideover.papers.wiring.Listing;

/**
 * What long work came to.
 *
 * @param files    to be saved
 * @param listings to be shown
 */
public record JobResult(List<JobFile> files, List<Listing> listings) {
    static final JobResult NOTHING = new JobResult(List.of(), List.of());

    public JobResult {
        files = List.copyOf(files);
        listings = List.copyOf(listings);
    }
}
