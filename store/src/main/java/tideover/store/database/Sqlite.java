package tideover.store.database;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import tideover.store.database.StoreRefusal.Reason;

/** One file; its write-ahead log lies beside it while it is open. */
final class Sqlite implements Vendor {
    private static final int LONGEST_WAIT_MILLIS = 10_000;

    private final Path file;
    private final SQLiteDataSource source;

    Sqlite(Path file) {
        this.file = file;
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

    @Override
    public String migrations() {
        return "sqlite";
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
    public @Nullable StoreRefusal refusal(SQLException failure) {
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
            try (ResultSet result = statement.executeQuery("PRAGMA wal_checkpoint(TRUNCATE)")) {
                if (result.next() && result.getInt(1) != 0)
                    throw new SQLException("somebody read so long that the write-ahead log could not be emptied");
            }
        }
    }
}
