package tideover.web.jobs;

/** Long work. It tells its progress before each part, and is ended there when somebody cancels it. */
public interface Task {
    /**
     * Does the work.
     *
     * @throws java.util.concurrent.CancellationException when it is cancelled
     */
    JobResult run(Progress progress);
}
