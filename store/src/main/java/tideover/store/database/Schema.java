package tideover.store.database;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import org.flywaydb.core.Flyway;
import tideover.store.database.StoreRefusal.Reason;

/** Brings a database to the newest version: numbered migrations that only go forward. */
final class Schema {
    /** The newest migration. */
    static final int VERSION = 3;

    private static final String HISTORY = "flyway_schema_history";

    private Schema() {}

    static void prepare(Vendor vendor) throws SQLException {
        int version = version(vendor);
        if (version > VERSION) throw StoreRefusal.of(Reason.STORE_NEWER, vendor.name(), version, VERSION);
        // Looking for migrations takes a third of the start; a database that is up to date needs none.
        if (version < VERSION) migrations(vendor).migrate();
    }

    static Flyway migrations(Vendor vendor) {
        return Flyway.configure()
                .dataSource(vendor.source())
                .locations("classpath:db/migration")
                .placeholders(Map.of("bytes", vendor.typeOfBytes()))
                .table(HISTORY)
                .loggers("slf4j")
                .cleanDisabled(true)
                .load();
    }

    /** The version of a database; 0 of an empty one. */
    private static int version(Vendor vendor) throws SQLException {
        try (Connection connection = vendor.inspection().getConnection();
                Statement statement = connection.createStatement()) {
            boolean ours = hasTable(connection, HISTORY);
            if (!ours && hasTable(connection, "%")) throw StoreRefusal.of(Reason.NOT_A_STORE, vendor.name());
            if (!ours) return 0;
            int newest = 0;
            try (ResultSet rows =
                    statement.executeQuery("SELECT version FROM " + HISTORY + " WHERE version IS NOT NULL")) {
                while (rows.next()) newest = Math.max(newest, Integer.parseInt(rows.getString(1)));
            }
            return newest;
        }
    }

    private static boolean hasTable(Connection connection, String name) throws SQLException {
        try (ResultSet tables =
                connection.getMetaData().getTables(null, connection.getSchema(), name, new String[] {"TABLE"})) {
            return tables.next();
        }
    }
}
