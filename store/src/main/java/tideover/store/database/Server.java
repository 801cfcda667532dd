package tideover.store.database;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import tideover.store.database.StoreRefusal.Reason;

/** PostgreSQL, for a company that runs one. */
final class Server implements Vendor {
    private final DataSource source;

    Server(DataSource source) {
        this.source = source;
    }

    @Override
    public String typeOfBytes() {
        return "BYTEA";
    }

    @Override
    public String name() {
        return "PostgreSQL";
    }

    @Override
    public DataSource source() {
        return source;
    }

    @Override
    public DataSource inspection() {
        return source;
    }

    @Override
    public void requireThere() {
        // A server that is gone does not answer.
    }

    @Override
    public @Nullable StoreRefusal refusal(SQLException failure) {
        String state = failure.getSQLState();
        if (state == null) return null;
        if (state.equals("53100")) return StoreRefusal.because(failure, Reason.DISK_FULL, name());
        // Class 08: no connection, or none any more.
        return state.startsWith("08")
                ? StoreRefusal.because(failure, Reason.WRITE_FAILED, name(), String.valueOf(failure.getMessage()))
                : null;
    }

    @Override
    public void eraseTraces(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("VACUUM FULL");
        }
    }

    @Override
    public List<String> troubles(Connection connection) {
        // A server checks its pages itself.
        return List.of();
    }

    @Override
    public void copy(Connection connection, Path target) {
        throw new IllegalStateException("a server is backed up by its own tools");
    }
}
