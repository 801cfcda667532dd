package tideover.command.kept;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Site;
import tideover.files.Edit;
import tideover.store.site.SiteSearch.Shelf;

/**
 * What commands ask of kept sites. What is not done is a {@link tideover.command.Refusal}, or a
 * {@link tideover.store.database.StoreRefusal} where the store itself is in the way.
 */
public interface Keeping extends AutoCloseable {

    /** The variants of the sites that match, the site changed last on top. */
    List<KeptVariant> list(String text, Shelf shelf);

    Optional<KeptVariant> find(String variant);

    /**
     * Keeps a site file as a new site.
     *
     * @param name of its first variant
     */
    KeptVariant bring(String file, byte[] bytes, String name);

    /**
     * The site itself.
     *
     * @param revision number of an earlier one; nothing for the newest
     */
    Site site(KeptVariant variant, @Nullable Long revision);

    /** Makes edits on the newest revision, all or none. */
    Saved change(KeptVariant variant, List<Edit> edits, String note);

    Saved undo(KeptVariant variant);

    Saved redo(KeptVariant variant);

    /** The oldest first. */
    List<KeptRevision> revisions(KeptVariant variant);

    List<Edit> difference(KeptVariant variant, long from, long to);

    KeptCustomers customers();

    KeptAttachments attachments();

    /** Copies everything into a file that is not there yet. */
    void backup(Path file);

    @Override
    void close();
}
