package tideover.store.site;

import java.time.Instant;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Site;
import tideover.files.Edit;
import tideover.files.FieldTable;
import tideover.files.SiteEdits;
import tideover.files.SiteFileResult;
import tideover.files.SiteFileResult.Readable;
import tideover.files.SiteFiles;
import tideover.files.difference.SiteDifference;
import tideover.store.database.Database;
import tideover.store.database.LogEntry;
import tideover.store.database.SearchWords;
import tideover.store.database.Sql;
import tideover.store.database.Times;

/**
 * The sites of a store. What a method here answers for is on the disk when it returns. A name that nothing bears is a
 * {@link NoSuchElementException}; what keeps the store from working is a
 * {@link tideover.store.database.StoreRefusal}. Safe to share between threads.
 */
public final class Sites {
    private final Database database;
    private final Bodies bodies;
    private final SiteEdits siteEdits;
    private final SiteFiles siteFiles;
    private final SiteDifference difference;

    public Sites(Database database, FieldTable table) {
        this.database = database;
        this.bodies = new Bodies(table);
        this.siteEdits = new SiteEdits(table);
        this.siteFiles = new SiteFiles(table);
        this.difference = new SiteDifference(table);
    }

    /**
     * Keeps a new site.
     *
     * @param variantName of its first variant, such as "As planned"
     * @throws IllegalArgumentException if the site could not be read again from a file
     */
    public StoredSite create(Site site, String variantName, LogEntry entry) {
        Site settled = bodies.settled(site);
        return database.write(sql -> begin(settled, variantName, RevisionKind.CREATED, entry, sql));
    }

    /**
     * Keeps what a site file says as a new site.
     *
     * @param fileName how messages call the file
     */
    public ImportResult importFile(String fileName, byte[] bytes, String variantName, LogEntry entry) {
        SiteFileResult result = siteFiles.read(fileName, bytes);
        if (result instanceof SiteFileResult.Refused refused) return new ImportResult.Refused(refused.problems());
        Site site = ((Readable) result).site();
        return new ImportResult.Imported(
                database.write(sql -> begin(site, variantName, RevisionKind.IMPORTED, entry, sql)));
    }

    private StoredSite begin(Site site, String variantName, RevisionKind kind, LogEntry entry, Sql sql) {
        SiteId id = SiteId.fresh();
        sql.update("site/insert")
                .bind("id", id.text())
                .bind("createdAt", Times.text(entry.when()))
                .execute();
        return revisions(sql).begin(id, name(variantName), site, kind, entry);
    }

    /** The sites that match, the one changed last on top. */
    public List<SiteRow> list(SiteSearch search) {
        return database.read(sql -> Rows.sites(SearchWords.bind(search.text(), sql.query("site/search"))
                .bind("shelf", search.shelf().name())
                .bind("most", search.most())));
    }

    public Optional<SiteRow> find(SiteId site) {
        return database.read(sql -> Rows.sites(sql.query("site/find").bind("site", site.text())).stream()
                .findFirst());
    }

    public Optional<VariantRow> find(VariantId variant) {
        return database.read(sql -> revisions(sql).findVariant(variant));
    }

    /** What a variant is now. */
    public StoredSite head(VariantId variant) {
        return database.read(sql -> {
            Revisions revisions = revisions(sql);
            return revisions.stored(revisions.requireHead(variant));
        });
    }

    /** What a variant was once. */
    public StoredSite at(RevisionId id) {
        return database.read(sql -> {
            Revisions revisions = revisions(sql);
            return revisions.stored(revisions.require(id));
        });
    }

    /** How a variant became what it is, the oldest first. */
    public List<Revision> revisions(VariantId variant) {
        return database.read(sql -> {
            List<Revision> all = revisions(sql).all(variant);
            if (all.isEmpty()) throw new NoSuchElementException("there is no variant " + variant);
            return all;
        });
    }

    /** What undo and redo would do now. */
    public Steps steps(VariantId variant) {
        return database.read(sql -> changes(sql).steps(variant));
    }

    /**
     * Makes a change: every edit or none.
     *
     * @param base number of the revision that was looked at; who has changed the same facts since then is told
     */
    public ChangeResult change(VariantId variant, long base, List<Edit> edits, LogEntry entry) {
        return database.write(sql -> changes(sql).change(variant, base, edits, entry));
    }

    /**
     * Takes the last change back.
     *
     * @param base number of the revision that was looked at; where it is no longer the newest, nothing is undone
     */
    public ChangeResult undo(VariantId variant, long base, LogEntry entry) {
        return database.write(sql -> changes(sql).undo(variant, base, entry));
    }

    /**
     * Makes a change anew that was taken back.
     *
     * @param base number of the revision that was looked at; where it is no longer the newest, nothing is redone
     */
    public ChangeResult redo(VariantId variant, long base, LogEntry entry) {
        return database.write(sql -> changes(sql).redo(variant, base, entry));
    }

    /**
     * Makes the site what it was once; a change that can be undone.
     *
     * @param base number of the revision that was looked at; where it is no longer the newest, nothing is restored
     */
    public ChangeResult restore(RevisionId wanted, long base, LogEntry entry) {
        return database.write(sql -> changes(sql).restore(wanted, base, entry));
    }

    /** What is different between two revisions, be they of one variant or of two. */
    public List<Edit> difference(RevisionId before, RevisionId after) {
        return database.read(sql -> {
            Revisions revisions = revisions(sql);
            return difference.between(
                    revisions.stored(revisions.require(before)).site(),
                    revisions.stored(revisions.require(after)).site());
        });
    }

    /** A further variant of the same site, which begins as a copy of this one. */
    public StoredSite newVariant(VariantId from, String variantName, LogEntry entry) {
        return database.write(sql -> {
            Revisions revisions = revisions(sql);
            SiteId site = revisions.requireVariant(from).site();
            Site content = revisions.stored(revisions.requireHead(from)).site();
            return revisions.begin(site, name(variantName), content, RevisionKind.CREATED, entry);
        });
    }

    /** A new site that begins as a copy of this variant; customers and attachments stay with the old one. */
    public StoredSite duplicate(VariantId from, LogEntry entry) {
        return database.write(sql -> {
            Revisions revisions = revisions(sql);
            String name = revisions.requireVariant(from).name();
            Site content = revisions.stored(revisions.requireHead(from)).site();
            return begin(content, name, RevisionKind.CREATED, entry, sql);
        });
    }

    /** Gives a variant another name. */
    public void rename(VariantId variant, String variantName) {
        String name = name(variantName);
        database.write(sql -> revisions(sql).rename(variant, name));
    }

    /** Puts a site away; it is still there to be read, found and changed. */
    public void archive(SiteId site, Instant when) {
        archive(site, Times.text(when));
    }

    /** Takes a site back into work. */
    public void unarchive(SiteId site) {
        archive(site, (String) null);
    }

    private void archive(SiteId site, @Nullable String archivedAt) {
        database.write(sql -> {
            int found = sql.update("site/archive")
                    .bind("site", site.text())
                    .bind("archivedAt", archivedAt)
                    .execute();
            if (found == 0) throw new NoSuchElementException("there is no site " + site);
            return found;
        });
    }

    /**
     * Reads every revision from the disk.
     *
     * @throws tideover.store.database.StoreRefusal at the first that is no longer what was kept
     */
    public void verify() {
        database.read(sql -> {
            bodies.verify(sql);
            return sql;
        });
    }

    private Changes changes(Sql sql) {
        return new Changes(siteEdits, difference, revisions(sql));
    }

    private Revisions revisions(Sql sql) {
        return new Revisions(bodies, sql);
    }

    private static String name(String typed) {
        if (typed.isBlank()) throw new IllegalArgumentException("a variant has a name");
        return typed.strip();
    }
}
