package tideover.store.site;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.files.Edit;
import tideover.files.EditResult;
import tideover.files.EditResult.Edited;
import tideover.files.SiteEdits;
import tideover.files.difference.SiteDifference;
import tideover.store.database.LogEntry;
import tideover.store.site.ChangeResult.Conflicting;
import tideover.store.site.ChangeResult.Refused;
import tideover.store.site.ChangeResult.Saved;
import tideover.store.site.ChangeResult.Unchanged;

/** What leads from one revision to the next, inside one transaction. */
final class Changes {
    private final SiteEdits siteEdits;
    private final SiteDifference difference;
    private final Revisions revisions;

    Changes(SiteEdits siteEdits, SiteDifference difference, Revisions revisions) {
        this.siteEdits = siteEdits;
        this.difference = difference;
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
        revisions.keep(edited);
        return new Saved(revisions.append(
                last, edited.site(), edited.digest(), RevisionKind.EDITED, null, last.position(), entry, edits));
    }

    ChangeResult undo(VariantId variant, long base, LogEntry entry) {
        Revision head = revisions.requireHead(variant);
        if (head.number() != base) return overtaken(head, base);
        Revision undone = undoable(head);
        return undone == null || undone.before() == null
                ? new Unchanged(revisions.stored(head))
                : repeated(head, RevisionKind.UNDONE, undone.before(), null, entry);
    }

    ChangeResult redo(VariantId variant, long base, LogEntry entry) {
        Revision head = revisions.requireHead(variant);
        if (head.number() != base) return overtaken(head, base);
        Revision redone = redoable(head);
        return redone == null
                ? new Unchanged(revisions.stored(head))
                : repeated(head, RevisionKind.REDONE, redone.number(), null, entry);
    }

    ChangeResult restore(RevisionId wanted, long base, LogEntry entry) {
        Revision head = revisions.requireHead(wanted.variant());
        if (head.number() != base) return overtaken(head, base);
        Revision old = revisions.require(wanted);
        if (old.digest().equals(head.digest())) return new Unchanged(revisions.stored(head));
        return repeated(head, RevisionKind.RESTORED, old.number(), head.position(), entry);
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

    /** A revision with the content of an earlier one; its edits say what that changes. */
    private ChangeResult repeated(
            Revision head, RevisionKind kind, long number, @Nullable Long before, LogEntry entry) {
        StoredSite earlier =
                revisions.stored(revisions.require(new RevisionId(head.id().variant(), number)));
        List<Edit> edits = difference.between(revisions.stored(head).site(), earlier.site());
        return new Saved(revisions.append(
                head, earlier.site(), earlier.revision().digest(), kind, number, before, entry, edits));
    }

    private ChangeResult overtaken(Revision head, long base) {
        return new Conflicting(
                revisions.stored(head), List.of(), revisions.since(head.id().variant(), base));
    }
}
