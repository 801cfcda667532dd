package tideover.web.start;

import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tideover.engine.assessment.Assessor;
import tideover.engine.site.Site;
import tideover.files.rules.RuleBookResult;
import tideover.files.rules.RuleBooks;
import tideover.files.tables.TableFiles;
import tideover.store.Store;
import tideover.store.site.SiteSearch;
import tideover.store.site.SiteSearch.Shelf;

/**
 * What takes its time and needs nothing else, begun on a thread of its own while the workbench starts: the tables of the
 * standards, and the first judging of a site, for which half the classes of the program are looked for.
 */
final class Preparation {
    private static final Logger LOG = LoggerFactory.getLogger(Preparation.class);

    private final FutureTask<Assessor> assessor = new FutureTask<>(() -> new Assessor(TableFiles.load()));

    /** Loads the tables. */
    static Preparation begin() {
        Preparation preparation = new Preparation();
        preparation.inBackground(preparation.assessor);
        return preparation;
    }

    /** Judges; waits for the tables. */
    Assessor assessor() {
        try {
            return assessor.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException("the tables of the standards cannot be loaded", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while the tables of the standards were loaded", e);
        }
    }

    /** Judges the site changed last, which is the one most likely asked for. */
    void judgeLatest(Store store) {
        inBackground(() -> {
            try {
                store.sites()
                        .list(new SiteSearch("", Shelf.IN_WORK, 1))
                        .forEach(row ->
                                judge(store.sites().head(row.latest().id()).site()));
            } catch (RuntimeException e) {
                // Whoever opens that site meets it again, and is told.
                LOG.warn("the site changed last could not be judged beforehand", e);
            }
        });
    }

    private void judge(Site site) {
        String country = site.house().place().country();
        RuleBookResult rules = RuleBooks.read(country == null ? "" : country, List.of());
        if (rules instanceof RuleBookResult.Readable readable) assessor().assessAtOnce(site, readable.rules());
    }

    private void inBackground(Runnable task) {
        Thread thread = new Thread(task, "preparation");
        thread.setDaemon(true);
        thread.start();
    }
}
