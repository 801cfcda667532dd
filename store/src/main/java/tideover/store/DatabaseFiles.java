package tideover.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A database file and what lies beside it while it is open, or after its process was killed. */
final class DatabaseFiles {
    /** What is written but not yet in the file. */
    static final String LOG = "-wal";
    /** The log, and how readers find their way in it. */
    static final List<String> COMPANIONS = List.of(LOG, "-shm");

    private DatabaseFiles() {}

    static Path companion(Path file, String companion) {
        return file.resolveSibling(file.getFileName() + companion);
    }

    static void delete(Path file) throws IOException {
        // The companions first: beside another file of that name they would be taken for its own.
        for (String companion : COMPANIONS) Files.deleteIfExists(companion(file, companion));
        Files.deleteIfExists(file);
    }

    /** Tidies up; what cannot be deleted is in nobody's way. */
    static void deleteQuietly(Path file) {
        try {
            delete(file);
        } catch (IOException e) {
            // The next backup or restore tries again.
        }
    }
}
