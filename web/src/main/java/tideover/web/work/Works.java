package tideover.web.work;

import jakarta.annotation.PreDestroy;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import tideover.engine.assessment.Assessment;
import tideover.engine.assessment.Assessor;
import tideover.store.Store;
import tideover.store.site.RevisionId;
import tideover.store.site.Steps;
import tideover.store.site.StoredSite;
import tideover.store.site.VariantId;
import tideover.store.site.VariantRow;
import tideover.web.page.NotHere;

/** The sites in work, judged; the last ones opened are kept. Safe to share between threads. */
@Component
public final class Works {
    /** As many sites as a busy day has, twice over; each takes a few hundred kilobytes. */
    private static final int KEPT = 64;

    private final Store store;
    private final Assessor assessor;
    private final SlowFindings slow;
    private final RulesByCountry rules;
    private final Map<VariantId, Work> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<VariantId, Work> eldest) {
            return size() > KEPT;
        }
    };

    Works(Store store, Assessor assessor, RulesByCountry rules) {
        this.store = store;
        this.assessor = assessor;
        this.rules = rules;
        this.slow = new SlowFindings(assessor);
    }

    /** The newest revision of a variant. @throws NotHere if there is none */
    public Work open(String variant) {
        VariantId id = id(variant);
        VariantRow row = store.sites().find(id).orElseThrow(() -> new NotHere("variant " + variant));
        synchronized (kept) {
            Work work = kept.get(id);
            if (work != null
                    && work.revision().number() == row.head()
                    && work.row().equals(row)) return work;
        }
        return keep(row, store.sites().head(id));
    }

    /** A revision just written. */
    public Work opened(StoredSite head) {
        VariantId id = head.revision().id().variant();
        return keep(store.sites().find(id).orElseThrow(() -> new NotHere("variant " + id)), head);
    }

    /** An earlier revision; not kept. */
    public Work at(String variant, long number) {
        Work head = open(variant);
        if (number < 1 || number > head.row().head()) throw new NotHere("revision %s %d".formatted(variant, number));
        StoredSite earlier = store.sites().at(new RevisionId(head.row().id(), number));
        return new Work(
                head.row(), earlier.revision(), assessor.assessAtOnce(earlier.site(), rules.of(earlier.site())));
    }

    /** Every finding, slow ones included, or nothing while they are computed; for whoever waits for them. */
    public Optional<Assessment> whole(Work work) {
        return slow.ask(work);
    }

    /** Every finding where the slow ones are there already; sets nothing going, so that an edit is answered at once. */
    public Optional<Assessment> wholeByNow(Work work) {
        return slow.find(work);
    }

    /** Whether slow findings could not be computed; whoever waits for them waits in vain. */
    public boolean hasFailed(Work work) {
        return slow.hasFailed(work);
    }

    /** All findings that there are by now. */
    public Assessment soFar(Work work) {
        return wholeByNow(work).orElse(work.atOnce());
    }

    /** The same with the lines behind each finding. */
    public Assessment explained(Work work) {
        return assessor.explain(work.site(), work.atOnce().rules());
    }

    /** What undo and redo would do now. */
    public Steps steps(Work work) {
        return store.sites().steps(work.row().id());
    }

    /** Judges. */
    public Assessor assessor() {
        return assessor;
    }

    private static VariantId id(String text) {
        try {
            return new VariantId(text);
        } catch (IllegalArgumentException e) {
            throw new NotHere("variant " + text);
        }
    }

    private Work keep(VariantRow row, StoredSite head) {
        Assessment judged = assessor.assessAtOnce(head.site(), rules.of(head.site()));
        Work work = new Work(row, head.revision(), assessor.withoutResults(judged));
        synchronized (kept) {
            Work other = kept.get(row.id());
            if (other == null || other.revision().number() <= work.revision().number()) kept.put(row.id(), work);
        }
        return work;
    }

    @PreDestroy
    void close() {
        slow.close();
    }
}
