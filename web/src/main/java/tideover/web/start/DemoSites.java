package tideover.web.start;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import tideover.store.Store;
import tideover.store.database.LogEntry;
import tideover.store.site.SiteSearch;

/** The invented houses that a demo opens with. */
final class DemoSites {
    private static final List<String> FILES = List.of("terrace.yaml", "farmhouse.yaml", "town-house.yaml");

    private DemoSites() {}

    /** Puts the sites into an empty store; one that was opened before keeps what became of them. */
    static void fill(Store store, Path examples, String variantName) {
        if (!store.sites().list(SiteSearch.of("")).isEmpty()) return;
        for (String file : FILES) {
            Path path = examples.resolve(file);
            try {
                store.sites()
                        .importFile(file, Files.readAllBytes(path), variantName, LogEntry.of("demo", Instant.now()));
            } catch (IOException e) {
                throw new UncheckedIOException("the example " + path + " cannot be read", e);
            }
        }
    }
}
