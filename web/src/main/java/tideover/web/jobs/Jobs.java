package tideover.web.jobs;

import jakarta.annotation.PreDestroy;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import tideover.store.site.RevisionId;
import tideover.store.site.VariantId;

/** All long work there is. Safe to share between threads. */
@Component
public final class Jobs {
    private static final Logger LOG = LoggerFactory.getLogger(Jobs.class);

    /** What is kept: as much as somebody comes back to, and never so much that the memory goes. */
    private static final int MOST_KEPT = 12;

    private static final long MOST_BYTES = 32L << 20;
    private static final int MOST_WAITING = 6;
    private static final long IDLE_S = 30;

    private final Map<JobKind, ThreadPoolExecutor> threads = new EnumMap<>(JobKind.class);
    private final Map<String, Job> jobs = new LinkedHashMap<>();

    Jobs() {
        for (JobKind kind : JobKind.values()) {
            ThreadPoolExecutor thread =
                    new ThreadPoolExecutor(1, 1, IDLE_S, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), task -> {
                        Thread worker = new Thread(task, kind.path());
                        worker.setDaemon(true);
                        return worker;
                    });
            thread.allowCoreThreadTimeOut(true);
            threads.put(kind, thread);
        }
    }

    /**
     * Starts work, or leaves it to the same work on the same revision that is on its way already.
     *
     * @return nothing where too much is waiting
     */
    public Optional<Job> start(JobKind kind, RevisionId revision, Task task) {
        Job job;
        synchronized (jobs) {
            int waiting = 0;
            for (Job other : jobs.values()) {
                if (other.kind() != kind || other.moment().state().isFinal()) continue;
                waiting++;
                if (other.revision().equals(revision) && other.moment().state() != Job.State.ENDING)
                    return Optional.of(other);
            }
            if (waiting >= MOST_WAITING) return Optional.empty();
            job = new Job(UUID.randomUUID().toString(), kind, revision);
            jobs.put(job.id(), job);
            makeRoom();
        }
        job.submitted(thread(kind).submit(() -> run(job, task)));
        return Optional.of(job);
    }

    private ThreadPoolExecutor thread(JobKind kind) {
        ThreadPoolExecutor thread = threads.get(kind);
        if (thread == null) throw new IllegalStateException("nobody does " + kind);
        return thread;
    }

    private void run(Job job, Task task) {
        long from = System.nanoTime();
        Optional<Throwable> trouble = job.run(task);
        if (trouble.isPresent())
            LOG.error(
                    "work failed kind={} variant={} revision={}",
                    job.kind(),
                    job.revision().variant(),
                    job.revision().number(),
                    trouble.get());
        else
            LOG.info(
                    "work ended kind={} variant={} revision={} state={} ms={}",
                    job.kind(),
                    job.revision().variant(),
                    job.revision().number(),
                    job.moment().state(),
                    TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - from));
        synchronized (jobs) {
            makeRoom();
        }
    }

    /** The oldest that is finished goes first; the last one made stays, however large. */
    private void makeRoom() {
        List<Job> finished = new ArrayList<>();
        for (Job job : jobs.values()) if (job.moment().state().isFinal()) finished.add(job);
        long bytes = finished.stream().mapToLong(Job::size).sum();
        int left = finished.size();
        Iterator<Job> oldest = finished.iterator();
        while (left > 1 && (left > MOST_KEPT || bytes > MOST_BYTES)) {
            Job gone = oldest.next();
            jobs.remove(gone.id());
            bytes -= gone.size();
            left--;
        }
    }

    /** The work of this id on this variant, if it is still kept. */
    public Optional<Job> find(VariantId variant, String id) {
        synchronized (jobs) {
            return Optional.ofNullable(jobs.get(id))
                    .filter(job -> job.revision().variant().equals(variant));
        }
    }

    /** The last work of a kind on a variant, whatever became of it. */
    public Optional<Job> newest(JobKind kind, VariantId variant) {
        Job newest = null;
        synchronized (jobs) {
            for (Job job : jobs.values())
                if (job.kind() == kind && job.revision().variant().equals(variant)) newest = job;
        }
        return Optional.ofNullable(newest);
    }

    /** Ends work. */
    public void cancel(Job job) {
        job.cancel();
        // What waited and was cancelled waits no more.
        thread(job.kind()).purge();
    }

    @PreDestroy
    void close() {
        threads.values().forEach(ThreadPoolExecutor::shutdownNow);
    }
}
