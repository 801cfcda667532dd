package tideover.web.start;

import java.nio.file.Path;
import java.util.List;
import tideover.files.FieldTable;
import tideover.store.Store;
import tideover.web.work.RulesByCountry;

/** Starts the workbench for tests of any area, on whatever port is free. */
public final class TestServing {
    private TestServing() {}

    /** A part of a workbench that runs. */
    public static <T> T part(Serving serving, Class<T> type) {
        return serving.part(type);
    }

    /** The workbench as {@code serve} starts it. */
    public static Serving start(Store store, Path folder, FieldTable fields) {
        try {
            return Serving.start(
                    new Opened(store, folder, fields, new RulesByCountry(List.of()), Preparation.begin()), 0, "/");
        } catch (Serving.PortTaken e) {
            throw new IllegalStateException("no port is free", e);
        }
    }
}
