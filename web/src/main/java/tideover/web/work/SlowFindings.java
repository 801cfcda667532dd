package tideover.web.work;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tideover.engine.assessment.Assessment;
import tideover.engine.assessment.Assessor;
import tideover.store.site.RevisionId;
import tideover.store.site.VariantId;

/** Slow findings, one site after the other; what was asked for and is out of date by the time it is its turn is left out. */
final class SlowFindings implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(SlowFindings.class);
    private static final int KEPT = 64;

    private final Assessor assessor;
    private final ExecutorService thread = Executors.newSingleThreadExecutor(task -> {
        Thread slow = new Thread(task, "slow findings");
        slow.setDaemon(true);
        return slow;
    });
    private final Map<VariantId, Asked> asked = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<VariantId, Asked> eldest) {
            return size() > KEPT;
        }
    };

    /** What came of it so far. */
    private enum State {
        COMPUTING,
        THERE,
        FAILED
    }

    /** The newest revision asked for, and what came of it. */
    private record Asked(RevisionId revision, Optional<Assessment> whole, State state) {}

    SlowFindings(Assessor assessor) {
        this.assessor = assessor;
    }

    /** All findings, or nothing yet: then they are on the way. */
    Optional<Assessment> find(Work work) {
        RevisionId revision = work.revision().id();
        synchronized (asked) {
            Asked before = asked.get(work.row().id());
            if (before != null && before.revision().equals(revision)) return before.whole();
            asked.put(work.row().id(), new Asked(revision, Optional.empty(), State.COMPUTING));
        }
        thread.execute(() -> compute(work));
        return Optional.empty();
    }

    /** Whether they could not be computed: then they are not on the way. */
    boolean hasFailed(Work work) {
        synchronized (asked) {
            Asked newest = asked.get(work.row().id());
            return newest != null && newest.revision().equals(work.revision().id()) && newest.state() == State.FAILED;
        }
    }

    private void compute(Work work) {
        if (!isWanted(work)) return;
        try {
            Assessment whole = assessor.withSlowFindings(work.atOnce());
            synchronized (asked) {
                if (isWanted(work))
                    asked.put(work.row().id(), new Asked(work.revision().id(), Optional.of(whole), State.THERE));
            }
        } catch (RuntimeException e) {
            synchronized (asked) {
                if (isWanted(work))
                    asked.put(work.row().id(), new Asked(work.revision().id(), Optional.empty(), State.FAILED));
            }
            LOG.error(
                    "slow findings failed variant={} revision={}",
                    work.row().id(),
                    work.revision().number(),
                    e);
        }
    }

    private boolean isWanted(Work work) {
        synchronized (asked) {
            Asked newest = asked.get(work.row().id());
            return newest != null && newest.revision().equals(work.revision().id());
        }
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }
}
