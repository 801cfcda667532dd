package tideover.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Phrase;
import tideover.engine.site.Site;
import tideover.files.FieldTable;
import tideover.papers.Wording;
import tideover.reference.GeneratedSites;
import tideover.reference.Houses;

/** Everything that is found in any house can be said: no place left empty, no key instead of a sentence. */
class SentencesTest {

    private static final Wording WORDING = Wording.of(Locale.ENGLISH, FieldTable.load());

    static Stream<Site> manySites() {
        return Stream.concat(Houses.all().stream().map(Houses::read), GeneratedSites.sites(60));
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void everyFindingAndEveryLineOfItsCalculationIsASentence(Site site) {
        Assessment assessment = Houses.explain(site);
        Wording names = WORDING.with(assessment.installation());
        for (Finding finding : assessment.findings()) {
            assertSaid(names.of(finding), finding.phrase());
            assertThat(names.of(finding)).endsWith(".");
        }
        for (List<Phrase> lines : assessment.calculations().values())
            for (Phrase line : lines) assertSaid(names.of(line), line);
    }

    private static void assertSaid(String sentence, Phrase phrase) {
        assertThat(sentence)
                .as(phrase.key())
                .doesNotContain("{")
                .doesNotContain(phrase.key())
                .doesNotContain("null")
                .doesNotContain("NaN")
                .doesNotContain("Infinity");
    }
}
