package tideover.store;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Sites in one file. */
class SqliteSitesTest extends SitesContract {
    @TempDir
    private Path folder;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.open(folder.resolve("data"), TestSites.TABLE);
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Override
    Store store() {
        return store;
    }

    @Override
    Store reopened() {
        store.close();
        open();
        return store;
    }
}
