package tideover.store;

import java.io.IOException;
import java.nio.file.Path;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import tideover.files.FieldTable;
import tideover.store.attachment.Attachments;
import tideover.store.customer.Customers;
import tideover.store.database.Database;
import tideover.store.site.Sites;

/**
 * Everything that is kept: one data folder, owned by one process at a time. What stops it is a
 * {@link tideover.store.database.StoreRefusal}, worded for whoever asked. Safe to share between threads.
 */
public final class Store implements AutoCloseable {
    /** The one file in which everything is. */
    static final String FILE = "tideover.db";

    private final Database database;
    private final @Nullable FolderLock lock;
    private final Sites sites;
    private final Customers customers;
    private final Attachments attachments;

    private Store(Database database, @Nullable FolderLock lock, FieldTable table) {
        this.database = database;
        this.lock = lock;
        this.sites = new Sites(database, table);
        this.customers = new Customers(database);
        this.attachments = new Attachments(database);
    }

    /**
     * Opens a data folder; it is made where it is missing, for its owner only. A database of an older program is lifted.
     *
     * @throws tideover.store.database.StoreRefusal if another process owns the folder, or it cannot be used
     */
    public static Store open(Path folder, FieldTable table) {
        PrivateFiles.createFolder(folder);
        FolderLock lock = FolderLock.take(folder);
        try {
            Path file = folder.resolve(FILE);
            PrivateFiles.create(file);
            return new Store(Database.inFile(file), lock, table);
        } catch (IOException e) {
            lock.close();
            throw PrivateFiles.refusal(folder, e);
        } catch (RuntimeException e) {
            lock.close();
            throw e;
        }
    }

    /** Opens a database on a server, which sees to backups itself. */
    static Store onServer(DataSource source, FieldTable table) {
        return new Store(Database.onServer(source), null, table);
    }

    public Sites sites() {
        return sites;
    }

    public Customers customers() {
        return customers;
    }

    public Attachments attachments() {
        return attachments;
    }

    @Override
    public void close() {
        try (database) {
            // Before the lock goes, so that the next owner finds all of it in the one file.
        } finally {
            if (lock != null) lock.close();
        }
    }
}
