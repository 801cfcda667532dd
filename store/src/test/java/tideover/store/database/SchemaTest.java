package tideover.store.database;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The migrations: the same steps for every make, and the newest one known to the program. */
class SchemaTest {
    private static final Path MIGRATIONS = Path.of("src", "main", "resources", "db", "migration");

    @TempDir
    private Path folder;

    @Test
    void everyMakeTakesTheSameSteps() throws IOException {
        List<String> steps = names("sqlite");
        assertThat(steps).hasSize(Schema.VERSION);
        assertThat(steps.get(steps.size() - 1)).startsWith("V%04d__".formatted(Schema.VERSION));
        assertThat(names("postgresql")).isEqualTo(steps);
    }

    @Test
    void onlyTheTypeOfBytesDiffersBetweenTheMakes() throws IOException {
        for (String step : names("sqlite"))
            assertThat(Files.readString(MIGRATIONS.resolve("postgresql").resolve(step))
                            .replace(" BYTEA ", " BLOB "))
                    .as(step)
                    .isEqualTo(Files.readString(MIGRATIONS.resolve("sqlite").resolve(step)));
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

    private static List<String> names(String make) throws IOException {
        try (Stream<Path> files = Files.list(MIGRATIONS.resolve(make))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
