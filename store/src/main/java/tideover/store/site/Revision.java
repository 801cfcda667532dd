package tideover.store.site;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Digest;
import tideover.files.Edit;
import tideover.store.database.LogEntry;

/**
 * One state of a variant and how it came about; never changed once it is there.
 *
 * @param digest    of the canonical JSON of the site
 * @param contentOf number of the revision whose content an undone, redone or restored one repeats
 * @param before    position that undoing it leads to; nothing where there is none
 * @param edits     what it changed in the one before it
 */
public record Revision(
        RevisionId id,
        Digest digest,
        RevisionKind kind,
        @Nullable Long contentOf,
        @Nullable Long before,
        LogEntry entry,
        List<Edit> edits) {
    public Revision {
        edits = List.copyOf(edits);
    }

    /** Its number among the revisions of its variant, from 1. */
    public long number() {
        return id.number();
    }

    /** Where one stands on the way of undo and redo: these go to and fro between the revisions that were new. */
    long position() {
        return isStep() && contentOf != null ? contentOf : id.number();
    }

    /** Whether it is a step back or forth and nothing new. */
    boolean isStep() {
        return kind == RevisionKind.UNDONE || kind == RevisionKind.REDONE;
    }
}
