package tideover.web.work;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.locks.LockSupport;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tideover.engine.assessment.Assessment;
import tideover.engine.assessment.Assessor;
import tideover.store.site.RevisionId;
import tideover.store.site.VariantId;

/**
 * Slow findings, one site after the other and only of sites that somebody waits for. Of each variant only the newest revision
 * waits its turn: whoever types fast leaves no queue behind.
 */
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

    private final Map<VariantId, Work> waiting = new LinkedHashMap<>();

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

    /** All findings where they are there already; nothing is set going. */
    Optional<Assessment> find(Work work) {
        synchronized (asked) {
            Asked newest = asked.get(work.row().id());
            if (newest == null || !newest.revision().equals(work.revision().id())) return Optional.empty();
            return newest.whole();
        }
    }

    /** All findings, or nothing yet: then they are on the way. */
    Optional<Assessment> ask(Work work) {
        synchronized (asked) {
            if (isWanted(work)) return find(work);
            asked.put(work.row().id(), new Asked(work.revision().id(), Optional.empty(), State.COMPUTING));
            waiting.put(work.row().id(), work);
        }
        thread.execute(this::computeNext);
        return Optional.empty();
    }

    private void computeNext() {
        Work next;
        synchronized (asked) {
            Iterator<Work> first = waiting.values().iterator();
            if (!first.hasNext()) return;
            next = first.next();
            first.remove();
        }
        long begin = System.nanoTime();
        compute(next);
        // Where many wait, edits of others come first: this thread takes no more than half a core.
        LockSupport.parkNanos(System.nanoTime() - begin);
    }

    /** Whether they could not be computed: then they are not on the way. */
    boolean hasFailed(Work work) {
        synchronized (asked) {
            Asked newest = asked.get(work.row().id());
            return newest != null && newest.revision().equals(work.revision().id()) && newest.state() == State.FAILED;
        }
    }

    private void compute(Work work) {
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
