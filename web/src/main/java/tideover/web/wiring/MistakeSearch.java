package tideover.web.wiring;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.papers.Wording;
import tideover.papers.wiring.Listing;
import tideover.papers.wiring.ListingCsv;
import tideover.papers.wiring.WiringData;
import tideover.papers.wiring.WiringPart;
import tideover.web.jobs.JobFile;
import tideover.web.jobs.JobResult;
import tideover.web.jobs.Progress;
import tideover.web.jobs.Task;
import tideover.web.work.Work;

/** Tries out every mistake that a person could make in wiring: which step of commissioning would reveal it. */
@Component
final class MistakeSearch {
    /** The parts that need it. */
    static final List<String> PARTS = List.of("coverage", "mistakes");

    /** Mistakes between two words about them: often enough for the eye, and to end soon when that is wanted. */
    private static final int STRIDE = 20;

    private final WiringSources sources;

    MistakeSearch(WiringSources sources) {
        this.sources = sources;
    }

    Task of(Work work, Wording words) {
        return progress -> {
            progress.tell(0, 1, Phrase.of("job.mistakes.model"));
            WiringData wiring = sources.of(work, words);
            wiring.model().coverage((tried, all) -> {
                if (tried % STRIDE == 0 || tried == all) tell(progress, tried, all);
            });
            List<Listing> listings = new ArrayList<>();
            for (String name : PARTS) {
                WiringPart part = WiringSources.find(name).orElseThrow();
                progress.tell(PARTS.indexOf(name), PARTS.size(), Phrase.of("job.mistakes.lists"));
                listings.addAll(part.of(wiring));
            }
            return new JobResult(
                    listings.stream()
                            .map(listing -> JobFile.text(listing.part() + ".csv", JobFile.CSV, ListingCsv.of(listing)))
                            .toList(),
                    listings);
        };
    }

    private static void tell(Progress progress, int tried, int all) {
        progress.tell(tried, all, Phrase.of("job.mistakes.tried", PhraseArg.count(tried), PhraseArg.count(all)));
    }
}
