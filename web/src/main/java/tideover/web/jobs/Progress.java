package tideover.web.jobs;

import tideover.engine.rules.Phrase;

/** Where long work tells how far it is. */
public interface Progress {
    /**
     * A part begins, or goes on.
     *
     * @param done  of all, how many are behind it
     * @param all   parts, or whatever is counted
     * @param doing what is done now
     * @throws java.util.concurrent.CancellationException when the work is to end
     */
    void tell(int done, int all, Phrase doing);
}
