package tideover.store.database;

import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/** What differs between the makes of database. */
interface Vendor {

    /** The folder of its migrations under {@code db/migration}. */
    String migrations();

    /** How messages call the database. */
    String name();

    /** Where connections come from. */
    DataSource source();

    /**
     * What the store says to a failure that its user can mend.
     *
     * @return nothing where the failure is our own mistake
     */
    @Nullable
    StoreRefusal refusal(SQLException failure);

    /** Rewrites the database so that no byte of what was deleted or overwritten is left in it. */
    void eraseTraces(Connection connection) throws SQLException;
}
