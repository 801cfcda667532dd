package tideover.store.site;

import java.util.List;
import tideover.files.EditResult.Conflict;
import tideover.files.InputProblem;

/** What came of a change, an undo or a redo. */
public sealed interface ChangeResult {

    /** It is on the disk. */
    record Saved(StoredSite head) implements ChangeResult {}

    /** The site already was like this, or there was nothing to undo or redo; no revision was made. */
    record Unchanged(StoredSite head) implements ChangeResult {}

    /** What was typed cannot be: all of it, and nothing was saved. */
    record Refused(List<InputProblem> problems) implements ChangeResult {
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Somebody changed the same meanwhile; nothing was saved.
     *
     * @param head      what stands there now
     * @param conflicts the facts that both wanted to change; none where an undo or redo was asked for
     * @param since     who changed them after the base, newest last
     */
    record Conflicting(StoredSite head, List<Conflict> conflicts, List<Revision> since) implements ChangeResult {
        public Conflicting {
            conflicts = List.copyOf(conflicts);
            since = List.copyOf(since);
        }
    }
}
