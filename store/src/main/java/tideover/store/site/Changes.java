package tideover.store.site;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Site;
import tideover.files.Edit;
import tideover.files.EditResult;
import tideover.files.EditResult.Edited;
import tideover.files.SiteEdits;
import tideover.store.database.LogEntry;
import tideover.store.site.ChangeResult.Conflicting;
import tideover.store.site.ChangeResult.Refused;
import tideover.store.site.ChangeResult.Saved;
import tideover.store.site.ChangeResult.Unchanged;

/** What leads from one revision to the next, inside one transaction. */
final class Changes {
    private final SiteEdits siteEdits;
    private final Revisions revisions;

    Changes(SiteEdits siteEdits, Revisions revisions) {
        this.siteEdits = siteEdits;
        this.revisions = revisions;
    }

    ChangeResult change(VariantId variant, long base, List<Edit> edits, LogEntry entry) {
        StoredSite head = revisions.stored(revisions.requireHead(variant));
        EditResult result = siteEdits.apply(head.site(), edits);
        if (result instanceof EditResult.Refused refused) return new Refused(refused.problems());
        if (result instanceof EditResult.Conflicting conflicting) {
            List<Revision> since = revisions.since(variant, base).stream()
                    .filter(revision -> conflicting.conflicts().stream()
                            .anyMatch(conflict -> EditPaths.touch(revision.edits(), conflict.edit())))
                    .toList();
            return new Conflicting(head, conflicting.conflicts(), since);
        }
        Edited edited = (Edited) result;
        Revision last = head.revision();
        if (edited.digest().equals(last.digest())) return new Unchanged(head);
        return new Saved(
                revisions.append(last, edited.site(), RevisionKind.EDITED, null, last.position(), entry, edits));
    }

    ChangeResult undo(VariantId variant, long base, LogEntry entry) {
        Revision head = revisions.requireHead(variant);
        if (head.number() != base) return overtaken(head, base);
        Revision undone = undoable(head);
        return undone == null || undone.before() == null
                ? new Unchanged(revisions.stored(head))
                : stepped(head, RevisionKind.UNDONE, undone.before(), entry, inverse(undone.edits()));
    }

    ChangeResult redo(VariantId variant, long base, LogEntry entry) {
        Revision head = revisions.requireHead(variant);
        if (head.number() != base) return overtaken(head, base);
        Revision redone = redoable(head);
        return redone == null
                ? new Unchanged(revisions.stored(head))
                : stepped(head, RevisionKind.REDONE, redone.number(), entry, redone.edits());
    }

    ChangeResult restore(RevisionId wanted, long base, LogEntry entry) {
        Revision head = revisions.requireHead(wanted.variant());
        if (head.number() != base) return overtaken(head, base);
        Revision old = revisions.require(wanted);
        if (old.digest().equals(head.digest())) return new Unchanged(revisions.stored(head));
        return new Saved(revisions.append(
                head,
                revisions.stored(old).site(),
                RevisionKind.RESTORED,
                old.number(),
                head.position(),
                entry,
                List.of()));
    }

    Steps steps(VariantId variant) {
        Revision head = revisions.requireHead(variant);
        return new Steps(head, undoable(head), redoable(head));
    }

    private @Nullable Revision undoable(Revision head) {
        Revision here = revisions.require(new RevisionId(head.id().variant(), head.position()));
        return here.before() == null ? null : here;
    }

    private @Nullable Revision redoable(Revision head) {
        if (!head.isStep()) return null;
        return revisions.findMadeFrom(head.id().variant(), head.position()).orElse(null);
    }

    private ChangeResult stepped(Revision head, RevisionKind kind, long position, LogEntry entry, List<Edit> edits) {
        Revision there = revisions.require(new RevisionId(head.id().variant(), position));
        Site content = revisions.stored(there).site();
        return new Saved(revisions.append(head, content, kind, position, null, entry, edits));
    }

    private ChangeResult overtaken(Revision head, long base) {
        return new Conflicting(
                revisions.stored(head), List.of(), revisions.since(head.id().variant(), base));
    }

    private static List<Edit> inverse(List<Edit> edits) {
        List<Edit> inverse = new ArrayList<>();
        for (Edit edit : edits) inverse.add(new Edit(edit.path(), edit.after(), edit.before()));
        Collections.reverse(inverse);
        return inverse;
    }
}
