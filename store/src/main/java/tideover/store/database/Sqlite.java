package tideover.store.database;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.sqlite.NativeLibraryNotFoundException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import tideover.store.database.StoreRefusal.Reason;

/** One file; its write-ahead log lies beside it while it is open. */
final class Sqlite implements Vendor {
    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
    private static final int LONGEST_WAIT_MILLIS = 10_000;

    private final Path file;
    private final SQLiteDataSource source;
    private final SQLiteDataSource inspection;
    /** By which the system tells this file from another of its name, where it does. */
    private @Nullable Object identity;

    Sqlite(Path file) {
        this.file = file;
        SQLiteConfig looking = new SQLiteConfig();
        looking.setBusyTimeout(LONGEST_WAIT_MILLIS);
        this.inspection = new SQLiteDataSource(looking);
        inspection.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(JournalMode.WAL);
        // In this mode a commit is on the disk when it returns; the one below would only be so after a checkpoint.
        config.setSynchronous(SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(LONGEST_WAIT_MILLIS);
        config.setPragma(SQLiteConfig.Pragma.SECURE_DELETE, "true");
        this.source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
    }

    /**
     * Looks at a file before it is opened: over one that is no database, its log would be thrown away. From then on it must
     * stay the same file.
     *
     * @throws StoreRefusal if it is neither empty nor a database
     */
    void requireDatabase() throws IOException {
        byte[] head;
        try (InputStream in = Files.newInputStream(file)) {
            head = in.readNBytes(MAGIC.length);
        }
        if (head.length > 0 && !Arrays.equals(head, MAGIC)) throw StoreRefusal.of(Reason.NOT_A_STORE, file);
        Path log = file.resolveSibling(file.getFileName() + "-wal");
        if (head.length == 0 && Files.exists(log) && Files.size(log) > 0)
            throw StoreRefusal.of(Reason.DAMAGED, file, "it is empty, but something was written after it");
        identity = identity();
    }

    // Open connections go on with a file that was moved or deleted, and nobody would find what they write.
    @Override
    public void requireThere() {
        Path folder = file.toAbsolutePath().getParent();
        try {
            if (Objects.equals(identity(), identity)) return;
        } catch (IOException e) {
            if (folder == null || !Files.isDirectory(folder))
                throw StoreRefusal.because(e, Reason.FOLDER_GONE, String.valueOf(folder));
        }
        throw StoreRefusal.of(Reason.STORE_GONE, file);
    }

    private @Nullable Object identity() throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
    }

    @Override
    public String typeOfBytes() {
        return "BLOB";
    }

    @Override
    public String name() {
        return file.toString();
    }

    @Override
    public DataSource source() {
        return source;
    }

    @Override
    public DataSource inspection() {
        return inspection;
    }

    @Override
    public @Nullable StoreRefusal refusal(SQLException failure) {
        if (failure.getCause() instanceof NativeLibraryNotFoundException)
            return StoreRefusal.because(failure, Reason.NOT_UNPACKED, System.getProperty("java.io.tmpdir"));
        SQLiteErrorCode code = code(failure);
        if (code == null) return null;
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder))
            return StoreRefusal.because(failure, Reason.FOLDER_GONE, String.valueOf(folder));
        // The lowest byte is the kind; what stands above only refines it.
        return switch (code.code & 0xFF) {
            case 13 -> StoreRefusal.because(failure, Reason.DISK_FULL, folder);
            case 8, 14 -> StoreRefusal.because(failure, Reason.FOLDER_READ_ONLY, folder);
            case 10 -> StoreRefusal.because(failure, Reason.WRITE_FAILED, folder, code.name());
            case 11 -> StoreRefusal.because(failure, Reason.DAMAGED, file, code.name());
            case 26 -> StoreRefusal.because(failure, Reason.NOT_A_STORE, file);
            default -> null;
        };
    }

    private static @Nullable SQLiteErrorCode code(SQLException failure) {
        return failure instanceof SQLiteException ours ? ours.getResultCode() : null;
    }

    @Override
    public void eraseTraces(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("VACUUM");
        }
        emptyLog(connection);
    }

    /** Brings all that was written into the file itself. */
    void emptyLog(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery("PRAGMA wal_checkpoint(TRUNCATE)")) {
            if (result.next() && result.getInt(1) > 0)
                throw new SQLException("somebody read so long that the write-ahead log could not be emptied");
        }
    }

    @Override
    public List<String> troubles(Connection connection) throws SQLException {
        List<String> troubles = new ArrayList<>();
        try (Statement statement = connection.createStatement()) {
            try (ResultSet rows = statement.executeQuery("PRAGMA integrity_check(3)")) {
                while (rows.next()) if (!rows.getString(1).equals("ok")) troubles.add(rows.getString(1));
            }
            try (ResultSet rows = statement.executeQuery("PRAGMA foreign_key_check")) {
                if (rows.next()) troubles.add("a row of " + rows.getString(1) + " belongs to nothing");
            }
        }
        return troubles;
    }

    @Override
    public void copy(Connection connection, Path target) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement("VACUUM INTO ?")) {
            statement.setString(1, target.toAbsolutePath().toString());
            statement.execute();
        }
    }
}
