package tideover.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
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
    private final FieldTable table;
    private final Sites sites;
    private final Customers customers;
    private final Attachments attachments;

    private Store(Database database, @Nullable FolderLock lock, FieldTable table) {
        this.database = database;
        this.lock = lock;
        this.table = table;
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

    /**
     * Writes a copy of everything, as of one moment, while work goes on; the copy is read again before it counts.
     *
     * @param file must not be there yet
     * @throws tideover.store.database.StoreRefusal if it cannot be written; then it is not there
     */
    public void backup(Path file) {
        new Backup(table).write(database, file);
    }

    /**
     * Puts a backup in the place of what a data folder holds. The backup is read whole, and lifted where it is of an older
     * program, before anything changes; what was there stays beside it under another name.
     *
     * @param when stands in that name
     * @return where the old database is now; nothing where there was none
     * @throws tideover.store.database.StoreRefusal if the backup is none, is damaged, or a process uses the folder
     */
    public static Optional<Path> restore(Path folder, Path backup, FieldTable table, Instant when) {
        PrivateFiles.createFolder(folder);
        FolderLock lock = FolderLock.take(folder);
        try (lock) {
            return new Restoring(folder, table).restore(backup, when);
        }
    }

    /**
     * Reads everything that is kept and compares it with its digests.
     *
     * @throws tideover.store.database.StoreRefusal at the first damage
     */
    public void verify() {
        new Checkup(table).check(database);
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
