package tideover.web.trial;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tideover.files.FieldTable;
import tideover.store.ServingFile;
import tideover.store.Store;
import tideover.store.database.LogEntry;
import tideover.store.site.ImportResult;
import tideover.web.start.Serving;
import tideover.web.start.TestServing;

/** A real workbench on a free port, over a folder of its own that goes with it. */
public final class Desk implements Asked, AutoCloseable {
    private static final FieldTable FIELDS = FieldTable.load();
    private static final Path EXAMPLES = Path.of("..", "examples");

    static {
        // The libraries of the store would talk before the log is set up.
        if (LoggerFactory.getILoggerFactory() instanceof LoggerContext logs)
            logs.getLogger(Logger.ROOT_LOGGER_NAME).setLevel(Level.WARN);
    }

    private final Path folder;
    private Store store;
    private Serving serving;

    private Desk(Path folder) {
        this.folder = folder;
        this.store = Store.open(folder, FIELDS);
        this.serving = TestServing.start(store, folder, FIELDS);
    }

    /** A workbench without sites. */
    public static Desk open() {
        try {
            return new Desk(Files.createTempDirectory("tideover-desk"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Stops the workbench and starts it anew over the same folder, on another port. */
    public void restart() {
        serving.close();
        store = Store.open(folder, FIELDS);
        serving = TestServing.start(store, folder, FIELDS);
    }

    /**
     * Keeps an example as a new site.
     *
     * @param file such as {@code town-house.yaml}
     * @return where its pages are, such as {@code /sites/3f…}
     */
    public String importExample(String file) {
        try {
            return importSite(Files.readString(EXAMPLES.resolve(file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Keeps the text of a site file as a new site. @return where its pages are */
    public String importSite(String text) {
        ImportResult result = store.sites()
                .importFile(
                        "site",
                        text.getBytes(StandardCharsets.UTF_8),
                        "As planned",
                        LogEntry.of("test", Instant.now()));
        if (result instanceof ImportResult.Imported imported)
            return "/sites/" + imported.head().revision().id().variant();
        throw new AssertionError("the site was refused: " + ((ImportResult.Refused) result).problems());
    }

    /** What is kept, past the workbench. */
    public Store store() {
        return store;
    }

    /** Where it is kept. */
    public Path folder() {
        return folder;
    }

    public int port() {
        return serving.port();
    }

    /** Scheme, host and port. */
    public String origin() {
        return "http://127.0.0.1:" + port();
    }

    /** The whole address of a path. */
    @Override
    public String at(String path) {
        return origin() + path;
    }

    /** An address that lets in once. */
    @Override
    public String startAddress() {
        return serving.address();
    }

    /** What programs send to be let in. */
    @Override
    public String key() {
        return ServingFile.find(folder).orElseThrow().key();
    }

    /** Somebody who was let in, without a browser. */
    public Visitor visitor() {
        return Visitor.letIn(this);
    }

    /** A program that has the key. */
    public Program program() {
        return new Program(this);
    }

    /** Somebody who has neither cookie nor key. */
    public Visitor stranger() {
        return Visitor.outside(this);
    }

    /** A part of the workbench, for tests that look behind the pages. */
    public <T> T part(Class<T> type) {
        return TestServing.part(serving, type);
    }

    @Override
    public void close() {
        serving.close();
        try (Stream<Path> all = Files.walk(folder)) {
            List<Path> inside = all.sorted(Comparator.reverseOrder()).toList();
            for (Path path : inside) Files.deleteIfExists(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
