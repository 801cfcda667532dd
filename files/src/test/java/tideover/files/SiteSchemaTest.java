package tideover.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The published schema against another program's reading of it. */
class SiteSchemaTest {
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SiteSchema.of(TestSites.TABLE));

    private static List<String> errors(String yaml) {
        return SCHEMA.validate(yaml, InputFormat.YAML).stream()
                .map(Error::toString)
                .toList();
    }

    @Test
    void theCottageAndEveryExampleAreOfTheSchemasForm() throws IOException {
        assertThat(errors(TestSites.cottage())).isEmpty();
        for (Path example : TestSites.examples())
            assertThat(errors(Files.readString(example))).as(example.toString()).isEmpty();
    }

    @Test
    void theSchemaKnowsTheJsonThatIsWritten() {
        String json = new SiteWriter(TestSites.TABLE).canonicalJson(TestSites.site(TestSites.cottage()));
        assertThat(SCHEMA.validate(json, InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "format: 1 | format: 2",
                "lengthM: 20 | lengthM: -20",
                "lengthM: 20 | lengthM: '20'",
                "lengthM: 20 | lenghtM: 20",
                "kind: LIGHTING | kind: lighting",
                "poles: 2 | poles: 2.5",
                "lockable: true | lockable: YES",
                "id: rod, | 'id: Rod,'",
                "id: rod, | ''",
                "[L1, N, PE] | '[N, PE]'",
                "[L1, N, PE] | '[L1, N, N]'",
                "edition: \"1983\" | edition: 1983",
                "origin: READ, | ''"
            })
    void whatTheSchemaCanTellItRefusesAsTheReaderDoes(String old, String replacement) {
        String text = TestSites.cottage().replace(old, replacement == null ? "" : replacement);
        assertThat(text).isNotEqualTo(TestSites.cottage());
        assertThat(errors(text)).isNotEmpty();
        assertThat(TestSites.problems(text)).isNotEmpty();
    }

    @Test
    void aFieldLeftEmptyIsOfTheSchemasForm() {
        assertThat(errors(TestSites.cottageWith("year: 1998", "year:"))).isEmpty();
        assertThat(errors(TestSites.cottageWith("stayOn: MUST", "stayOn:"))).isEmpty();
    }
}
