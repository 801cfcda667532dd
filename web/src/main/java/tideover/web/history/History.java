package tideover.web.history;

import java.util.List;
import tideover.web.edit.Outcome;
import tideover.web.page.Frame;

/**
 * The revisions of a site, the newest on top.
 *
 * @param address of the site
 * @param base    number of the newest revision
 * @param rows    those shown
 * @param older   address of the ones before; empty where there are none
 * @param undo    what undo would take back, worded; empty where there is nothing
 * @param redo    what redo would bring back, worded; empty where there is nothing
 * @param numbers all there are, the newest first
 * @param last    what came of the last step
 */
public record History(
        Frame frame,
        String address,
        long base,
        List<Row> rows,
        String older,
        String undo,
        String redo,
        List<Long> numbers,
        Outcome last) {
    public History {
        rows = List.copyOf(rows);
        numbers = List.copyOf(numbers);
    }

    /**
     * One revision.
     *
     * @param number  from 1
     * @param what    how it came about, worded
     * @param when    worded
     * @param who     made it
     * @param changes what it changed
     * @param more    how many changes are not shown, worded; empty where all are
     */
    public record Row(long number, String what, String when, String who, List<Change> changes, String more) {
        public Row {
            changes = List.copyOf(changes);
        }
    }

    /**
     * One change.
     *
     * @param fact   what was changed
     * @param before what stood there
     * @param after  what stands there since
     * @param aside  whether it only says who says so
     */
    public record Change(String fact, String before, String after, Aside aside) {}

    /** Whether a change is about the house, or about who says so. */
    public enum Aside {
        FACT,
        PROVENANCE
    }
}
