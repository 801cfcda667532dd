package tideover.web.edit;

import java.util.List;

/**
 * What came of the last change, for the page that shows it.
 *
 * @param said      that something was done which cannot be seen otherwise; empty for nothing
 * @param problems  what was not taken, and why
 * @param conflicts what somebody else changed meanwhile
 */
public record Outcome(String said, List<Problem> problems, List<Clash> conflicts) {
    /** Nothing to tell. */
    public static final Outcome NONE = new Outcome("", List.of(), List.of());

    public Outcome {
        problems = List.copyOf(problems);
        conflicts = List.copyOf(conflicts);
    }

    /** Whether nothing was saved. */
    public boolean isRefused() {
        return !problems.isEmpty() || !conflicts.isEmpty();
    }

    /**
     * One thing that was not taken.
     *
     * @param path     the fact, as edits name it
     * @param sentence what is wrong and how to mend it
     * @param typed    what had been typed; empty where it is not known
     */
    public record Problem(String path, String sentence, String typed) {}

    /**
     * One fact that two wanted to change.
     *
     * @param path     the fact
     * @param sentence who changed it to what, and what you wanted
     * @param now      what stands there, as an edit names it
     * @param wanted   what you had typed
     */
    public record Clash(String path, String sentence, String now, String wanted) {}
}
