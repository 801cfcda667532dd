package tideover.store.database;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/** What differs between the makes of database. */
interface Vendor {

    /** What it calls a column of bytes: all in which its migrations differ. */
    String typeOfBytes();

    /** How messages call the database. */
    String name();

    /** Where connections come from. */
    DataSource source();

    /** Connections that look and change nothing, not even how the database writes. */
    DataSource inspection();

    /**
     * Looks whether what was opened is still where others will look for it.
     *
     * @throws StoreRefusal if it is not
     */
    void requireThere();

    /**
     * What the store says to a failure that its user can mend.
     *
     * @return nothing where the failure is our own mistake
     */
    @Nullable
    StoreRefusal refusal(SQLException failure);

    /** Rewrites the database so that no byte of what was deleted or overwritten is left in it. */
    void eraseTraces(Connection connection) throws SQLException;

    /** What the database itself finds wrong with it; empty where all is well. */
    List<String> troubles(Connection connection) throws SQLException;

    /** Writes all of it, as of one moment, into a file that is not there yet or empty. */
    void copy(Connection connection, Path target) throws SQLException;
}
