package tideover.command.kept;

import java.time.Instant;
import java.util.List;
import tideover.files.Edit;
import tideover.store.site.RevisionKind;

/** One revision and how it came about. */
public record KeptRevision(long number, RevisionKind kind, String who, Instant when, String note, List<Edit> edits) {
    public KeptRevision {
        edits = List.copyOf(edits);
    }
}
