package tideover.reference.house;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tideover.engine.rules.Verification;

/** Every number that came from outside says from where, and how sure that is. */
class SourcedDataTest {

    private static final Path DATA = ProjectFiles.ROOT.resolve("files/src/main/resources/tideover/files");
    private static final Set<String> VERIFICATIONS =
            Stream.of(Verification.values()).map(Enum::name).collect(Collectors.toSet());

    @Test
    void everyTableRowNamesItsSourceAndVerification() throws IOException {
        List<Path> tables = ProjectFiles.endingIn(DATA.resolve("tables"), ".csv");
        assertThat(tables).isNotEmpty();
        List<String> troubles = new ArrayList<>();
        for (Path table : tables) {
            try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(table)) {
                rows.forEach(row -> {
                    String place = "%s line %d".formatted(table.getFileName(), row.getStartingLineNumber());
                    for (String column : List.of("source", "place", "verification"))
                        if (row.findField(column).orElse("").isBlank()) troubles.add(place + ": no " + column);
                    String verification = row.findField("verification").orElse("");
                    if (!VERIFICATIONS.contains(verification))
                        troubles.add(place + ": verification '" + verification + "'");
                });
            }
        }
        assertThat(troubles).isEmpty();
    }

    @Test
    void everyLimitOfARuleBookNamesItsClauseSourceForceAndVerification() throws IOException {
        List<Path> books = ProjectFiles.endingIn(DATA.resolve("rules"), ".yaml");
        assertThat(books).isNotEmpty();
        List<String> troubles = new ArrayList<>();
        for (Path book : books) {
            var content = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(Files.readString(book));
            for (Object entry : (List<?>) content.get("limits")) {
                var limit = (Map<?, ?>) entry;
                String place = book.getFileName() + " " + limit.get("limit");
                for (String field : List.of("value", "clause", "source", "force", "verification"))
                    if (limit.get(field) == null || limit.get(field).toString().isBlank())
                        troubles.add(place + ": no " + field);
                if (!VERIFICATIONS.contains(String.valueOf(limit.get("verification"))))
                    troubles.add(place + ": verification '" + limit.get("verification") + "'");
            }
        }
        assertThat(troubles).isEmpty();
    }
}
