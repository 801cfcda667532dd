package tideover.web.history;

import java.util.List;
import tideover.web.history.History.Change;
import tideover.web.history.History.Row;
import tideover.web.note.Note;
import tideover.web.page.Frame;

/**
 * A revision as it was.
 *
 * @param address  of the site
 * @param base     number of the newest revision
 * @param revision the one shown
 * @param look     end of the style of its outcome
 * @param outcome  sign and word
 * @param verdict  sentence of the whole
 * @param counts   how many findings it sums up
 * @param notes    what was in the way then
 * @param since    what is different now
 */
public record Earlier(
        Frame frame,
        String address,
        long base,
        Row revision,
        String look,
        String outcome,
        String verdict,
        String counts,
        List<Note> notes,
        List<Change> since) {
    public Earlier {
        notes = List.copyOf(notes);
        since = List.copyOf(since);
    }
}
