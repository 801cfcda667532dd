package tideover.store.database;

import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.locator.ClasspathSqlLocator;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.Update;

/** The statements of one transaction, by the names of their files. */
public final class Sql {
    private static final ClasspathSqlLocator FILES = ClasspathSqlLocator.create();

    private final Handle handle;

    Sql(Handle handle) {
        this.handle = handle;
    }

    /**
     * A question.
     *
     * @param name such as {@code revision/find}
     */
    public Query query(String name) {
        return handle.createQuery(text(name));
    }

    /**
     * A change.
     *
     * @param name such as {@code revision/insert}
     */
    public Update update(String name) {
        return handle.createUpdate(text(name));
    }

    private static String text(String name) {
        return FILES.locate("tideover/store/sql/" + name);
    }
}
