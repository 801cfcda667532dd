package tideover.store.database;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.concurrent.locks.ReentrantLock;
import javax.sql.DataSource;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;

/**
 * A database that is ready: migrated to the newest version. One transaction writes at a time, others read meanwhile
 * what was there before it. Safe to share between threads.
 */
public final class Database implements AutoCloseable {
    private final Vendor vendor;
    private final Pool readers;
    private final Pool writer;
    private final Jdbi reading;
    private final Jdbi writing;
    private final ReentrantLock oneWriter = new ReentrantLock(true);

    private Database(Vendor vendor) {
        this.vendor = vendor;
        this.readers = new Pool(vendor.source());
        this.writer = new Pool(vendor.source());
        this.reading = Jdbi.create(readers);
        this.writing = Jdbi.create(writer);
    }

    /**
     * A database in one file, which is there already, be it empty.
     *
     * @throws StoreRefusal if the file is none of ours, damaged, from a newer program, or cannot be written
     */
    public static Database inFile(Path file) throws IOException {
        Sqlite vendor = new Sqlite(file);
        vendor.requireDatabase();
        return open(vendor);
    }

    /** A database on a server. */
    public static Database onServer(DataSource source) {
        return open(new Server(source));
    }

    /**
     * Brings what a killed process left beside a database file into it, where the file is sound enough for that.
     *
     * @param file is left at its version
     * @return whether it was sound enough
     */
    public static boolean settle(Path file) {
        Sqlite vendor = new Sqlite(file);
        try (Connection connection = vendor.inspection().getConnection()) {
            vendor.emptyLog(connection);
            return true;
        } catch (SQLException e) {
            return false;
        }
    }

    private static Database open(Vendor vendor) {
        Database database = new Database(vendor);
        try {
            Schema.prepare(vendor);
            return database;
        } catch (SQLException | RuntimeException e) {
            database.close();
            throw database.said(e);
        }
    }

    /** How messages call it. */
    public String name() {
        return vendor.name();
    }

    /** What is done in one transaction. */
    @FunctionalInterface
    public interface Work<T extends @Nullable Object> {
        T with(Sql sql);
    }

    /** Reads; everything asked for is of one moment. */
    public <T extends @Nullable Object> T read(Work<T> work) {
        vendor.requireThere();
        try {
            return reading.inTransaction(handle -> work.with(new Sql(handle)));
        } catch (RuntimeException e) {
            throw said(e);
        }
    }

    /** Writes. What is done is on the disk when this returns; where it throws, nothing is. */
    public <T extends @Nullable Object> T write(Work<T> work) {
        oneWriter.lock();
        try {
            vendor.requireThere();
            return writing.inTransaction(handle -> work.with(new Sql(handle)));
        } catch (RuntimeException e) {
            forgetWriter(e);
            throw said(e);
        } finally {
            oneWriter.unlock();
        }
    }

    /** Leaves no byte of what was deleted or overwritten. */
    public void eraseTraces() {
        oneWriter.lock();
        try (Connection connection = vendor.source().getConnection()) {
            vendor.eraseTraces(connection);
        } catch (SQLException e) {
            throw said(e);
        } finally {
            oneWriter.unlock();
        }
    }

    /**
     * What the database itself finds wrong with it; reading all of it takes its time.
     *
     * @return empty where all is well
     */
    public List<String> troubles() {
        try (Connection connection = vendor.source().getConnection()) {
            return vendor.troubles(connection);
        } catch (SQLException e) {
            throw said(e);
        }
    }

    /** Writes all of it, as of one moment, into a file that is not there yet or empty; others go on meanwhile. */
    public void copyTo(Path target) {
        vendor.requireThere();
        try (Connection connection = vendor.source().getConnection()) {
            vendor.copy(connection, target);
        } catch (SQLException e) {
            // What fails here is almost always the writing.
            StoreRefusal refusal = new Sqlite(target).refusal(e);
            throw refusal == null ? said(e) : refusal;
        }
    }

    private void forgetWriter(RuntimeException trouble) {
        try {
            writer.drop();
        } catch (SQLException e) {
            trouble.addSuppressed(e);
        }
    }

    /** What to throw: a sentence where somebody can mend it. */
    private RuntimeException said(Exception trouble) {
        for (Throwable cause = trouble; cause != null; cause = cause.getCause()) {
            if (cause instanceof StoreRefusal refusal) return refusal;
            if (cause instanceof SQLException failure) {
                StoreRefusal refusal = vendor.refusal(failure);
                if (refusal != null) return refusal;
            }
        }
        return trouble instanceof RuntimeException known ? known : new IllegalStateException(vendor.name(), trouble);
    }

    @Override
    public void close() {
        oneWriter.lock();
        try (readers;
                writer) {
            // Closed in turn, whatever becomes of the first.
        } catch (SQLException e) {
            throw said(e);
        } finally {
            oneWriter.unlock();
        }
    }
}
