package tideover.store.database;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
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
    public String migrations() {
        return "postgresql";
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
}
