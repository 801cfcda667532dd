package tideover.store;

import java.nio.file.Path;
import java.util.function.Supplier;
import javax.sql.DataSource;

/** The databases that must do the same. */
enum Make {
    SQLITE {
        @Override
        Supplier<Store> fresh(Path folder) {
            return () -> Store.open(folder.resolve("data"), TestSites.TABLE);
        }
    },
    POSTGRESQL {
        @Override
        Supplier<Store> fresh(Path folder) {
            DataSource source = Postgres.fresh();
            return () -> Store.onServer(source, TestSites.TABLE);
        }
    };

    /**
     * A store that is empty at first; each call opens it again.
     *
     * @param folder of the test
     */
    abstract Supplier<Store> fresh(Path folder);
}
