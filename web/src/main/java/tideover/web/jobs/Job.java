package tideover.web.jobs;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Phrase;
import tideover.store.site.RevisionId;

/** One piece of long work. Safe to look at from any thread. */
public final class Job {
    /** How far it is. */
    public enum State {
        WAITING,
        RUNNING,
        /** Told to end, and not yet at a place where it can. */
        ENDING,
        DONE,
        CANCELLED,
        FAILED;

        /** Whether it will change no more. */
        public boolean isFinal() {
            return this == DONE || this == CANCELLED || this == FAILED;
        }
    }

    /**
     * How far it is, at one moment.
     *
     * @param step  raised with each change
     * @param doing what is done now; nothing before it begins
     */
    public record Moment(
            State state,
            int step,
            int done,
            int all,
            @Nullable Phrase doing) {}

    /** Of a row of a table, cells and their words together. */
    private static final long ROW_BYTES = 2_000;

    private final String id;
    private final JobKind kind;
    private final RevisionId revision;
    private @Nullable Future<?> work;
    private Moment moment = new Moment(State.WAITING, 0, 0, 0, null);
    private JobResult result = JobResult.NOTHING;

    Job(String id, JobKind kind, RevisionId revision) {
        this.id = id;
        this.kind = kind;
        this.revision = revision;
    }

    public String id() {
        return id;
    }

    public JobKind kind() {
        return kind;
    }

    /** What it is made of. */
    public RevisionId revision() {
        return revision;
    }

    public synchronized Moment moment() {
        return moment;
    }

    /** What it came to; nothing before it is done. */
    public synchronized JobResult result() {
        return result;
    }

    /** One of its files. */
    public Optional<JobFile> find(String name) {
        return result().files().stream()
                .filter(file -> file.name().equals(name))
                .findFirst();
    }

    synchronized void submitted(Future<?> future) {
        work = future;
    }

    /** Does the work, on a thread that is its own meanwhile. @return what went wrong, if anything did */
    Optional<Throwable> run(Task task) {
        if (!begin()) return Optional.empty();
        try {
            end(State.DONE, task.run(this::tell));
            return Optional.empty();
        } catch (RuntimeException | Error e) {
            // Whatever waits inside the work ends with an exception of its own when it is interrupted.
            boolean wanted = isEnding();
            end(wanted ? State.CANCELLED : State.FAILED, JobResult.NOTHING);
            return wanted ? Optional.empty() : Optional.of(e);
        }
    }

    private synchronized boolean begin() {
        if (moment.state() != State.WAITING) return false;
        moment = new Moment(State.RUNNING, moment.step() + 1, 0, 0, null);
        return true;
    }

    private void tell(int done, int all, Phrase doing) {
        if (Thread.interrupted() || isEnding()) throw new CancellationException(id);
        synchronized (this) {
            moment = new Moment(moment.state(), moment.step() + 1, done, all, doing);
        }
    }

    private synchronized boolean isEnding() {
        return moment.state() == State.ENDING;
    }

    private synchronized void end(State state, JobResult made) {
        // What was told to end and came to its end all the same was not wanted any more.
        boolean unwanted = moment.state() == State.ENDING;
        moment = new Moment(
                unwanted ? State.CANCELLED : state, moment.step() + 1, moment.done(), moment.all(), moment.doing());
        result = unwanted ? JobResult.NOTHING : made;
    }

    /** Ends it: at once if it waits, else where the work next looks. */
    synchronized void cancel() {
        if (moment.state() != State.WAITING && moment.state() != State.RUNNING) return;
        State next = moment.state() == State.WAITING ? State.CANCELLED : State.ENDING;
        moment = new Moment(next, moment.step() + 1, moment.done(), moment.all(), moment.doing());
        if (work != null) work.cancel(true);
    }

    /** About what it keeps in memory [bytes]. */
    long size() {
        JobResult kept = result();
        return kept.files().stream().mapToLong(JobFile::size).sum()
                + kept.listings().stream()
                        .mapToLong(listing -> ROW_BYTES * listing.size())
                        .sum();
    }
}
