package tideover.command.kept;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.Site;
import tideover.files.Edit;
import tideover.store.Store;
import tideover.store.database.Ids;
import tideover.store.database.LogEntry;
import tideover.store.site.ChangeResult;
import tideover.store.site.ImportResult;
import tideover.store.site.Revision;
import tideover.store.site.RevisionId;
import tideover.store.site.SiteId;
import tideover.store.site.SiteSearch;
import tideover.store.site.SiteSearch.Shelf;
import tideover.store.site.StoredSite;
import tideover.store.site.VariantId;
import tideover.store.site.VariantRow;

/** The store, opened by this process. */
final class OwnStore implements Keeping {
    private static final String WHO = "command line";
    private static final int MOST = 500;

    private final Store store;
    private final Desk desk;
    private final Clock clock;

    OwnStore(Store store, Desk desk, Clock clock) {
        this.store = store;
        this.desk = desk;
        this.clock = clock;
    }

    @Override
    public List<KeptVariant> list(String text, Shelf shelf) {
        return store.sites().list(new SiteSearch(text, shelf, MOST)).stream()
                .flatMap(site -> site.variants().stream())
                .map(OwnStore::kept)
                .toList();
    }

    @Override
    public Optional<KeptVariant> find(String variant) {
        return Ids.isWellFormed(variant)
                ? store.sites().find(new VariantId(variant)).map(OwnStore::kept)
                : Optional.empty();
    }

    @Override
    public KeptVariant bring(String file, byte[] bytes, String name) {
        ImportResult result = store.sites().importFile(file, bytes, name, entry(""));
        if (result instanceof ImportResult.Refused refused) throw desk.refusal(refused.problems());
        VariantId variant =
                ((ImportResult.Imported) result).head().revision().id().variant();
        return store.sites().find(variant).map(OwnStore::kept).orElseThrow();
    }

    @Override
    public Site site(KeptVariant variant, @Nullable Long revision) {
        if (revision == null) return store.sites().head(id(variant)).site();
        if (revision < 1 || revision > variant.revision())
            throw new Refusal(List.of(
                    desk.sentence("keeping.noRevision", variant.designation(), String.valueOf(variant.revision()))));
        return store.sites().at(new RevisionId(id(variant), revision)).site();
    }

    @Override
    public Saved change(KeptVariant variant, List<Edit> edits, String note) {
        return saved(store.sites().change(id(variant), variant.revision(), edits, entry(note)));
    }

    @Override
    public Saved undo(KeptVariant variant) {
        return saved(store.sites().undo(id(variant), variant.revision(), entry("")));
    }

    @Override
    public Saved redo(KeptVariant variant) {
        return saved(store.sites().redo(id(variant), variant.revision(), entry("")));
    }

    private Saved saved(ChangeResult result) {
        if (result instanceof ChangeResult.Saved saved) return saved(Saved.Kind.SAVED, saved.head());
        if (result instanceof ChangeResult.Unchanged unchanged) return saved(Saved.Kind.UNCHANGED, unchanged.head());
        if (result instanceof ChangeResult.Refused refused) throw desk.refusal(refused.problems());
        int conflicts = ((ChangeResult.Conflicting) result).conflicts().size();
        throw new Refusal(List.of(desk.wording().text("api.conflict", PhraseArg.count(conflicts))));
    }

    private Saved saved(Saved.Kind kind, StoredSite head) {
        String verdict = desk.wording()
                .of(desk.assessor()
                        .assess(head.site(), desk.rules(head.site(), List.of()))
                        .verdict());
        return new Saved(kind, head.revision().number(), verdict);
    }

    @Override
    public List<KeptRevision> revisions(KeptVariant variant) {
        Stream<Revision> all = store.sites().revisions(id(variant)).stream();
        return all.map(each -> new KeptRevision(
                        each.number(),
                        each.kind(),
                        each.entry().who(),
                        each.entry().when(),
                        each.entry().note(),
                        each.edits()))
                .toList();
    }

    @Override
    public List<Edit> difference(KeptVariant variant, long from, long to) {
        site(variant, from);
        site(variant, to);
        return store.sites().difference(new RevisionId(id(variant), from), new RevisionId(id(variant), to));
    }

    @Override
    public KeptCustomers customers() {
        return new OwnCustomers(this, store.customers(), desk, clock);
    }

    @Override
    public KeptAttachments attachments() {
        return new OwnAttachments(this, store.attachments(), desk);
    }

    @Override
    public void backup(Path file) {
        store.backup(file);
    }

    @Override
    public void close() {
        store.close();
    }

    LogEntry entry(String note) {
        return new LogEntry(WHO, clock.instant(), note);
    }

    /** The site of a variant. */
    SiteId site(KeptVariant variant) {
        return store.sites()
                .find(id(variant))
                .map(VariantRow::site)
                .orElseThrow(() -> new Refusal(List.of(desk.sentence("keeping.unknown", variant.variant()))));
    }

    private static VariantId id(KeptVariant variant) {
        return new VariantId(variant.variant());
    }

    private static KeptVariant kept(VariantRow row) {
        return new KeptVariant(
                row.id().text(),
                row.site().text(),
                row.name(),
                row.head(),
                row.designation(),
                row.country(),
                row.changedAt());
    }
}
