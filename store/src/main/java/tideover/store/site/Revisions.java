package tideover.store.site;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.jdbi.v3.core.statement.Update;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Digest;
import tideover.engine.site.Place;
import tideover.engine.site.Site;
import tideover.files.Edit;
import tideover.files.EditResult.Edited;
import tideover.store.database.Folding;
import tideover.store.database.LogEntry;
import tideover.store.database.Sql;
import tideover.store.database.Times;

/** The revisions of variants, inside one transaction. */
final class Revisions {
    private final Bodies bodies;
    private final Sql sql;

    Revisions(Bodies bodies, Sql sql) {
        this.bodies = bodies;
        this.sql = sql;
    }

    VariantRow requireVariant(VariantId variant) {
        return findVariant(variant).orElseThrow(() -> new NoSuchElementException("there is no variant " + variant));
    }

    Optional<VariantRow> findVariant(VariantId variant) {
        return sql.query("variant/find")
                .bind("id", variant.text())
                .map((row, context) -> Rows.variant(row))
                .findOne();
    }

    Optional<Revision> findHead(VariantId variant) {
        return sql.query("revision/head")
                .bind("variant", variant.text())
                .map((row, context) -> Rows.revision(row))
                .findOne();
    }

    Revision requireHead(VariantId variant) {
        return findHead(variant).orElseThrow(() -> new NoSuchElementException("there is no variant " + variant));
    }

    Optional<Revision> find(RevisionId id) {
        return sql.query("revision/find")
                .bind("variant", id.variant().text())
                .bind("number", id.number())
                .map((row, context) -> Rows.revision(row))
                .findOne();
    }

    Revision require(RevisionId id) {
        return find(id).orElseThrow(() -> new NoSuchElementException("there is no revision " + id));
    }

    /** All of them, the oldest first. */
    List<Revision> all(VariantId variant) {
        return since(variant, 0);
    }

    /** Those after a base, the oldest first. */
    List<Revision> since(VariantId variant, long base) {
        return sql.query("revision/since")
                .bind("variant", variant.text())
                .bind("base", base)
                .map((row, context) -> Rows.revision(row))
                .list();
    }

    /** The newest revision that was made from a position. */
    Optional<Revision> findMadeFrom(VariantId variant, long position) {
        return sql.query("revision/made_from")
                .bind("variant", variant.text())
                .bind("position", position)
                .map((row, context) -> Rows.revision(row))
                .findOne();
    }

    StoredSite stored(Revision revision) {
        return new StoredSite(revision, bodies.site(revision.digest(), sql));
    }

    /** A new variant of a site, and its first revision. */
    StoredSite begin(SiteId site, String name, Site content, RevisionKind kind, LogEntry entry) {
        VariantId variant = VariantId.fresh();
        bound("variant/insert", variant, content, entry)
                .bind("site", site.text())
                .bind("name", name)
                .bind("searched", searched(name, content.house().place().designation()))
                .execute();
        RevisionId first = new RevisionId(variant, 1);
        return inserted(first, content, bodies.keep(content, sql), kind, null, null, entry, List.of());
    }

    /** Keeps what an edit made, for a revision to be appended. */
    void keep(Edited edited) {
        bodies.keep(edited, sql);
    }

    /**
     * A revision upon the head, which it follows.
     *
     * @param digest under which the content is kept
     */
    StoredSite append(
            Revision head,
            Site content,
            Digest digest,
            RevisionKind kind,
            @Nullable Long contentOf,
            @Nullable Long before,
            LogEntry entry,
            List<Edit> edits) {
        VariantRow variant = requireVariant(head.id().variant());
        RevisionId next = new RevisionId(variant.id(), head.number() + 1);
        StoredSite stored = inserted(next, content, digest, kind, contentOf, before, entry, edits);
        bound("variant/move", variant.id(), content, entry)
                .bind("head", next.number())
                .bind(
                        "searched",
                        searched(variant.name(), content.house().place().designation()))
                .execute();
        return stored;
    }

    int rename(VariantId variant, String name) {
        VariantRow row = requireVariant(variant);
        return sql.update("variant/rename")
                .bind("id", variant.text())
                .bind("name", name)
                .bind("searched", searched(name, row.designation()))
                .execute();
    }

    private StoredSite inserted(
            RevisionId id,
            Site content,
            Digest digest,
            RevisionKind kind,
            @Nullable Long contentOf,
            @Nullable Long before,
            LogEntry entry,
            List<Edit> edits) {
        sql.update("revision/insert")
                .bind("variant", id.variant().text())
                .bind("number", id.number())
                .bind("body", digest.hex())
                .bind("kind", kind.name())
                .bind("contentOf", contentOf)
                .bind("beforePosition", before)
                .bind("who", entry.who())
                .bind("recordedAt", Times.text(entry.when()))
                .bind("note", entry.note())
                .bind("edits", EditsJson.text(edits))
                .execute();
        return new StoredSite(new Revision(id, digest, kind, contentOf, before, entry, edits), content);
    }

    private Update bound(String statement, VariantId variant, Site content, LogEntry entry) {
        Place place = content.house().place();
        return sql.update(statement)
                .bind("id", variant.text())
                .bind("designation", orEmpty(place.designation()))
                .bind("country", orEmpty(place.country()))
                .bind("changedAt", Times.text(entry.when()));
    }

    private static String searched(String name, @Nullable String designation) {
        return Folding.fold(name + " " + orEmpty(designation));
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
