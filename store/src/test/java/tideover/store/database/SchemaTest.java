package tideover.store.database;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The migrations: the newest one is known to the program, and a ready database has taken them all. */
class SchemaTest {
    private static final Path MIGRATIONS = Path.of("src", "main", "resources", "db", "migration");

    @TempDir
    private Path folder;

    @Test
    void theProgramKnowsItsNewestStep() throws IOException {
        try (Stream<Path> files = Files.list(MIGRATIONS)) {
            List<String> steps =
                    files.map(file -> file.getFileName().toString()).sorted().toList();
            assertThat(steps).hasSize(Schema.VERSION);
            assertThat(steps.get(steps.size() - 1)).startsWith("V%04d__".formatted(Schema.VERSION));
        }
    }

    @Test
    void aReadyDatabaseHasTakenExactlyTheStepsThatAreThere() throws IOException {
        Path file = Files.createFile(folder.resolve("test.db"));
        Database.inFile(file).close();
        assertThat(Schema.migrations(new Sqlite(file)).validateWithResult().validationSuccessful)
                .isTrue();
        // A second start looks no longer for migrations, and finds the database ready.
        Database.inFile(file).close();
    }
}
