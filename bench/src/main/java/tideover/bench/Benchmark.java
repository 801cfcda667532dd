package tideover.bench;

import java.io.IOException;
import java.nio.file.Path;

/** Something a user waits for, measured. */
interface Benchmark {

    /** Its name on the command line and in the record. */
    String name();

    /** What is timed, in a sentence. */
    String meaning();

    /** Unit of the figure and of its aim. */
    String unit();

    /** What the figure should be; in {@link #unit()}. */
    Aim aim();

    /**
     * Measures anew.
     *
     * @param file site file that the inputs are made from by small edits
     * @throws IOException           if a file cannot be read or written, or a process not started
     * @throws IllegalStateException if the work that is measured goes wrong
     */
    Measurement run(Path file) throws IOException;
}
