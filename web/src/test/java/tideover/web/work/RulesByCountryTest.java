package tideover.web.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.engine.rules.Limit;
import tideover.engine.site.Site;
import tideover.files.FieldTable;
import tideover.files.SiteFileResult;
import tideover.files.SiteFiles;

class RulesByCountryTest {
    private static final String LIMIT = "voltage.dropOtherRatio";

    @TempDir
    private Path folder;

    private Path book(String name, String over, String value) throws IOException {
        return Files.writeString(folder.resolve(name + ".yaml"), """
                book: %s
                over: %s
                name: Conditions of our own
                limits:
                  - limit: %s
                    value: %s
                    force: REQUIRED
                    source: Conditions of our company
                    clause: page 3
                    verification: OWN_CHOICE
                """.formatted(name, over, LIMIT, value));
    }

    private static double limit(RulesByCountry rules, String house) {
        SiteFileResult read = new SiteFiles(FieldTable.load()).read(Path.of("..", "examples", house));
        Site site = ((SiteFileResult.Readable) read).site();
        return rules.of(site).find(LIMIT).map(Limit::requireNumber).orElseThrow();
    }

    @Test
    void aBookWrittenOverAnEarlierOneOfOnesOwnHoldsWhereThatHolds() throws IOException {
        RulesByCountry rules =
                new RulesByCountry(List.of(book("COMPANY", "DE", "0.03"), book("BRANCH", "COMPANY", "0.02")));
        assertThat(rules.read()).isEmpty();
        assertThat(limit(rules, "town-house.yaml")).isEqualTo(0.02);
        assertThat(limit(rules, "terrace.yaml")).isEqualTo(0.05);
    }

    @Test
    void booksOfTwoCountriesHoldEachInItsOwn() throws IOException {
        RulesByCountry rules = new RulesByCountry(List.of(book("NORTH", "DE", "0.03"), book("WEST", "UK", "0.02")));
        assertThat(rules.read()).isEmpty();
        assertThat(limit(rules, "town-house.yaml")).isEqualTo(0.03);
        assertThat(limit(rules, "terrace.yaml")).isEqualTo(0.02);
    }

    @Test
    void whatWasReadHoldsThoughTheFileGoesAway() throws IOException {
        Path file = book("COMPANY", "DE", "0.03");
        RulesByCountry rules = new RulesByCountry(List.of(file));
        assertThat(rules.read()).isEmpty();
        Files.delete(file);
        assertThat(limit(rules, "town-house.yaml")).isEqualTo(0.03);
    }

    @Test
    void aBookThatFitsNowhereIsToldOnce() throws IOException {
        Path missing = folder.resolve("missing.yaml");
        RulesByCountry rules = new RulesByCountry(List.of(book("COMPANY", "DE", "0.03"), missing));
        assertThat(rules.read())
                .singleElement()
                .satisfies(problem -> assertThat(problem.file()).isEqualTo(missing.toString()));
    }
}
