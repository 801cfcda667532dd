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
    /** What the house is called that is shown first. */
    private static final String SHOWN_FIRST = "Amselweg 11";

    private DemoSites() {}

    /**
     * Puts the sites into an empty store; one that was opened before keeps what became of them.
     *
     * @return path of the page to begin with
     */
    static String fill(Store store, Path examples, String variantName) {
        if (store.sites().list(SiteSearch.of("")).isEmpty())
            for (String file : FILES) keep(store, examples.resolve(file), variantName);
        return store.sites().list(SiteSearch.of(SHOWN_FIRST)).stream()
                .findFirst()
                .map(site -> "/sites/" + site.variants().get(0).id() + "/circuits")
                .orElse("/");
    }

    private static void keep(Store store, Path file, String variantName) {
        try {
            store.sites()
                    .importFile(
                            file.getFileName().toString(),
                            Files.readAllBytes(file),
                            variantName,
                            LogEntry.of("demo", Instant.now()));
        } catch (IOException e) {
            throw new UncheckedIOException("the example " + file + " cannot be read", e);
        }
    }
}
