package tideover.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import tideover.files.FieldTable;
import tideover.store.database.Database;
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;

/** Copies of a database: written beside, read again, and only then given their name. */
final class Backup {
    private final FieldTable table;

    Backup(FieldTable table) {
        this.table = table;
    }

    void write(Database database, Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder))
            throw StoreRefusal.of(Reason.FILE_MISSING, folder == null ? file : folder);
        if (Files.exists(file)) throw StoreRefusal.of(Reason.FILE_EXISTS, file);
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            DatabaseFiles.delete(part);
            PrivateFiles.create(part);
            database.copyTo(part);
            new Checkup(table).check(part);
            PrivateFiles.sync(part);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
            PrivateFiles.syncNames(folder);
        } catch (StoreRefusal e) {
            // What is wrong with the copy is wrong with the original.
            throw e.naming(database.name(), part);
        } catch (IOException e) {
            throw PrivateFiles.refusal(folder, e);
        } finally {
            DatabaseFiles.deleteQuietly(part);
        }
    }
}
