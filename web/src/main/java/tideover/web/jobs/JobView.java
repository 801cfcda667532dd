package tideover.web.jobs;

import java.util.List;
import tideover.papers.Wording;

/**
 * One piece of long work as it is shown.
 *
 * @param kind     as keys and ids write it
 * @param address  of it
 * @param back     the page on which it is shown
 * @param token    what its form sends along
 * @param state    how far it is
 * @param step     raised with each change
 * @param sentence how far it is, and what is done now
 * @param done     of all
 * @param all      parts; 0 where nothing is counted yet
 * @param older    that it was made of an earlier revision, worded; else empty
 * @param files    made by it
 */
public record JobView(
        Wording words,
        String kind,
        String address,
        String back,
        String token,
        Job.State state,
        int step,
        String sentence,
        int done,
        int all,
        String older,
        List<FileLink> files) {
    public JobView {
        files = List.copyOf(files);
    }

    /**
     * A file that may be saved.
     *
     * @param name under which it is saved
     * @param what it is, worded
     * @param size worded
     */
    public record FileLink(String name, String what, String address, String size) {}

    /** Whether it can still be cancelled. */
    public boolean isGoing() {
        return state == Job.State.WAITING || state == Job.State.RUNNING;
    }

    /** Whether it will change no more. */
    public boolean isFinal() {
        return state.isFinal();
    }
}
