package tideover.web.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.http.MediaType;
import tideover.engine.rules.Phrase;
import tideover.store.site.RevisionId;
import tideover.store.site.VariantId;

class JobsTest {
    private static final Phrase PART = Phrase.of("job.papers.DATA");
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final Jobs jobs = new Jobs();

    @AfterEach
    void end() {
        jobs.close();
    }

    private static RevisionId revision(int number) {
        return new RevisionId(new VariantId("00000000000000%02x".formatted(number)), 1);
    }

    private static void until(BooleanSupplier what) throws InterruptedException {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!what.getAsBoolean()) {
            if (System.nanoTime() > end) throw new AssertionError("waited in vain");
            Thread.sleep(5);
        }
    }

    private static void until(Job job, Job.State state) throws InterruptedException {
        until(() -> job.moment().state() == state);
    }

    private Job start(int number, Task task) {
        return jobs.start(JobKind.PAPERS, revision(number), task).orElseThrow();
    }

    @Test
    void cancelledWorkEndsBeforeItsNextPart() throws InterruptedException {
        AtomicInteger parts = new AtomicInteger();
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch cancelled = new CountDownLatch(1);
        Job job = start(1, progress -> {
            for (int part = 0; part < 1_000; part++) {
                progress.tell(part, 1_000, PART);
                parts.incrementAndGet();
                begun.countDown();
                waitUninterruptibly(cancelled);
            }
            return JobResult.NOTHING;
        });
        assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
        jobs.cancel(job);
        assertThat(job.moment().state()).isEqualTo(Job.State.ENDING);
        cancelled.countDown();
        until(job, Job.State.CANCELLED);
        assertThat(parts).hasValue(1);
    }

    @Test
    void cancelledWorkThatWaitsIsWokenAndEnds() throws InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        Job job = start(1, progress -> {
            begun.countDown();
            try {
                Thread.sleep(Duration.ofHours(1).toMillis());
            } catch (InterruptedException e) {
                throw new IllegalStateException("woken", e);
            }
            return JobResult.NOTHING;
        });
        assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
        jobs.cancel(job);
        until(job, Job.State.CANCELLED);
    }

    @Test
    void workThatWasNotWantedAnyMoreKeepsNothing() throws InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch cancelled = new CountDownLatch(1);
        Job job = start(1, progress -> {
            begun.countDown();
            waitUninterruptibly(cancelled);
            return new JobResult(List.of(file(10)), List.of());
        });
        assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
        jobs.cancel(job);
        cancelled.countDown();
        until(job, Job.State.CANCELLED);
        assertThat(job.result().files()).isEmpty();
    }

    @Test
    void oneOfAKindIsDoneAtATimeAndTheNextMayBeCancelledWhileItWaits() throws InterruptedException {
        CountDownLatch go = new CountDownLatch(1);
        AtomicInteger begun = new AtomicInteger();
        Task task = progress -> {
            begun.incrementAndGet();
            waitUninterruptibly(go);
            return JobResult.NOTHING;
        };
        Job first = start(1, task);
        Job second = start(2, task);
        Job third = start(3, task);
        until(first, Job.State.RUNNING);
        assertThat(second.moment().state()).isEqualTo(Job.State.WAITING);
        jobs.cancel(second);
        assertThat(second.moment().state()).isEqualTo(Job.State.CANCELLED);
        go.countDown();
        until(third, Job.State.DONE);
        assertThat(begun).hasValue(2);
    }

    @Test
    void theSameWorkOnTheSameRevisionIsDoneOnce() throws InterruptedException {
        CountDownLatch go = new CountDownLatch(1);
        Task task = progress -> {
            waitUninterruptibly(go);
            return JobResult.NOTHING;
        };
        Job first = start(1, task);
        assertThat(start(1, task)).isSameAs(first);
        go.countDown();
        until(first, Job.State.DONE);
        assertThat(start(1, task)).isNotSameAs(first);
    }

    @Test
    void whoeverStartsMoreThanCanWaitIsTold() {
        CountDownLatch go = new CountDownLatch(1);
        Task task = progress -> {
            waitUninterruptibly(go);
            return JobResult.NOTHING;
        };
        int started = 0;
        while (started < 50
                && jobs.start(JobKind.PAPERS, revision(started), task).isPresent()) started++;
        assertThat(started).isBetween(2, 20);
        assertThat(jobs.start(JobKind.MISTAKES, revision(60), task)).isPresent();
        go.countDown();
    }

    @Test
    void workThatFailsSaysSoAndTheNextIsDone() throws InterruptedException {
        Job failing = start(1, progress -> {
            throw new IllegalStateException("meant to fail");
        });
        until(failing, Job.State.FAILED);
        until(start(2, progress -> JobResult.NOTHING), Job.State.DONE);
    }

    @Test
    void theOldestResultsGoWhenThereIsNoRoom() throws InterruptedException {
        Job first = start(1, progress -> new JobResult(List.of(file(20 << 20)), List.of()));
        until(first, Job.State.DONE);
        assertThat(jobs.find(revision(1).variant(), first.id())).isPresent();
        Job second = start(2, progress -> new JobResult(List.of(file(20 << 20)), List.of()));
        until(second, Job.State.DONE);
        until(() -> jobs.find(revision(1).variant(), first.id()).isEmpty());
        assertThat(jobs.find(revision(2).variant(), second.id()).flatMap(job -> job.find("paper.pdf")))
                .isPresent();
    }

    @Test
    void workOfOneSiteIsNotFoundUnderAnother() throws InterruptedException {
        Job job = start(1, progress -> new JobResult(List.of(file(1)), List.of()));
        until(job, Job.State.DONE);
        assertThat(jobs.find(revision(2).variant(), job.id())).isEqualTo(Optional.empty());
    }

    private static JobFile file(int bytes) {
        return JobFile.of("paper.pdf", MediaType.APPLICATION_PDF, new byte[bytes]);
    }

    private static void waitUninterruptibly(CountDownLatch latch) {
        boolean wasInterrupted = false;
        while (true) {
            try {
                if (latch.await(20, TimeUnit.SECONDS)) break;
                throw new IllegalStateException("waited in vain");
            } catch (InterruptedException e) {
                wasInterrupted = true;
            }
        }
        if (wasInterrupted) Thread.currentThread().interrupt();
    }
}
