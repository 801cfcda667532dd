package tideover.store;

import java.nio.file.Path;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Tests of what is kept, run on every make of database. */
@ParameterizedClass(name = "{0}")
@EnumSource
abstract class OnEveryMake {
    @Parameter
    Make make;

    @TempDir
    Path folder;

    private Supplier<Store> opening;
    private Store store;

    @BeforeEach
    void open() {
        opening = make.fresh(folder);
        store = opening.get();
    }

    @AfterEach
    void close() {
        store.close();
    }

    Store store() {
        return store;
    }

    /** The same store after it was closed. */
    Store reopened() {
        store.close();
        store = opening.get();
        return store;
    }
}
