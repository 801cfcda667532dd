package tideover.web.history;

import java.util.List;
import tideover.web.history.History.Change;
import tideover.web.page.Frame;

/**
 * What is different between two revisions.
 *
 * @param address of the site
 * @param from    number of the one
 * @param to      number of the other
 * @param changes from the one to the other
 * @param numbers all revisions there are, the newest first
 */
public record Difference(Frame frame, String address, long from, long to, List<Change> changes, List<Long> numbers) {
    public Difference {
        changes = List.copyOf(changes);
        numbers = List.copyOf(numbers);
    }
}
