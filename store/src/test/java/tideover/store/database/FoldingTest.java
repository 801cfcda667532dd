package tideover.store.database;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Texts as they are searched. */
class FoldingTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Müllerstraße 7 | mullerstrasse 7",
                "MÜLLERSTRASSE 7 | mullerstrasse 7",
                "  Café   Łódź | cafe łodz",
                "İstanbul | istanbul",
                "ﬁeld ① | field 1",
                "Ελλάδα | ελλαδα",
            })
    void neitherCaseNorAccentsCount(String text, String expected) {
        assertThat(Folding.fold(text)).isEqualTo(expected);
    }
}
