package tideover.store.database;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.ConcurrentLinkedDeque;
import javax.sql.DataSource;
import org.jdbi.v3.core.ConnectionFactory;
import org.jspecify.annotations.Nullable;

/** Keeps connections open between uses; as many are open as there are users, and the last used is taken first. */
final class Pool implements ConnectionFactory, AutoCloseable {
    private final DataSource source;
    private final ConcurrentLinkedDeque<Connection> idle = new ConcurrentLinkedDeque<>();
    private volatile boolean closed;

    Pool(DataSource source) {
        this.source = source;
    }

    @Override
    public Connection openConnection() throws SQLException {
        Connection known = idle.pollLast();
        return known == null ? source.getConnection() : known;
    }

    @Override
    public void closeConnection(Connection connection) throws SQLException {
        if (closed || connection.isClosed() || !connection.getAutoCommit()) connection.close();
        else idle.addLast(connection);
    }

    /** Closes those nobody uses: after trouble none is kept that may have been part of it. */
    void drop() throws SQLException {
        SQLException first = null;
        for (Connection connection = idle.pollLast(); connection != null; connection = idle.pollLast()) {
            try {
                connection.close();
            } catch (SQLException e) {
                first = first(first, e);
            }
        }
        if (first != null) throw first;
    }

    private static SQLException first(@Nullable SQLException first, SQLException next) {
        if (first == null) return next;
        first.addSuppressed(next);
        return first;
    }

    @Override
    public void close() throws SQLException {
        closed = true;
        drop();
    }
}
