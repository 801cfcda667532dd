package tideover.web.start;

import tideover.web.trial.Program;
import tideover.web.trial.ServedProcess;

/** Changes the length of one cable, by a program or on a page. */
interface Hand {
    /** The fact that is changed. */
    String FACT = "oven.cable.lengthM";

    /** What can be done. */
    enum Step {
        EDIT,
        UNDO,
        REDO;

        String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** Begins work with a workbench that was just started. */
    void open(ServedProcess workbench);

    /**
     * Does something and waits for the answer.
     *
     * @param base   number of the revision there is
     * @param before length there is [m]
     * @param after  length there will be [m]
     * @return number of the new revision
     */
    long take(Step step, long base, int before, int after);

    /** What there is now. */
    int value(Program program);

    /** Number of the newest revision. */
    long head(Program program);
}
