package tideover.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import tideover.files.FieldTable;
import tideover.store.database.Database;
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;

/**
 * Puts a backup in the place of a database. The folder always holds one whole database under its usual name: the old one
 * until the very moment in which the new one takes its place.
 */
final class Restoring {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final Path folder;
    private final FieldTable table;
    private final Path current;
    private final Path incoming;

    Restoring(Path folder, FieldTable table) {
        this.folder = folder;
        this.table = table;
        this.current = folder.resolve(Store.FILE);
        this.incoming = folder.resolve(Store.FILE + ".restoring");
    }

    Optional<Path> restore(Path backup, Instant when) {
        if (!Files.isRegularFile(backup)) throw StoreRefusal.of(Reason.FILE_MISSING, backup);
        try {
            DatabaseFiles.delete(incoming);
            copy(backup, incoming);
            Path log = DatabaseFiles.companion(backup, DatabaseFiles.LOG);
            if (Files.exists(log)) copy(log, DatabaseFiles.companion(incoming, DatabaseFiles.LOG));
            if (Files.size(incoming) == 0) throw StoreRefusal.of(Reason.NOT_A_STORE, backup);
            new Checkup(table).check(incoming);
            PrivateFiles.sync(incoming);
            Optional<Path> kept = keepOld(when);
            Files.move(incoming, current, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            PrivateFiles.syncNames(folder);
            return kept;
        } catch (StoreRefusal e) {
            throw e.naming(backup, incoming);
        } catch (IOException e) {
            throw PrivateFiles.refusal(folder, e);
        } finally {
            DatabaseFiles.deleteQuietly(incoming);
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        PrivateFiles.create(to);
        try (OutputStream out = Files.newOutputStream(to)) {
            Files.copy(from, out);
        }
    }

    /** Gives the old database a second name, whole: with what a killed process of it left in its log. */
    private Optional<Path> keepOld(Instant when) throws IOException {
        if (!Files.exists(current) || Files.size(current) == 0) return Optional.empty();
        Path kept = folder.resolve("tideover-%s.db".formatted(STAMP.format(when)));
        for (int i = 2; Files.exists(kept); i++)
            kept = folder.resolve("tideover-%s-%d.db".formatted(STAMP.format(when), i));
        boolean sameFile = linked(kept);
        Path log = DatabaseFiles.companion(current, DatabaseFiles.LOG);
        Path keptLog = DatabaseFiles.companion(kept, DatabaseFiles.LOG);
        // Copied before anything opens the database: the log of a damaged one would be thrown away then.
        if (Files.exists(log) && Files.size(log) > 0) copy(log, keptLog);
        if (Database.settle(current) && sameFile) Files.deleteIfExists(keptLog);
        // The new database must not take them for its own.
        for (String companion : DatabaseFiles.COMPANIONS)
            Files.deleteIfExists(DatabaseFiles.companion(current, companion));
        return Optional.of(kept);
    }

    private boolean linked(Path kept) throws IOException {
        try {
            Files.createLink(kept, current);
            return true;
        } catch (UnsupportedOperationException | FileSystemException e) {
            copy(current, kept);
            PrivateFiles.sync(kept);
            return false;
        }
    }
}
