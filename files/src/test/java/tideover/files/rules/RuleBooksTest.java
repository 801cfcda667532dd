package tideover.files.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import tideover.engine.rules.Limit;
import tideover.engine.rules.RuleBook;
import tideover.engine.rules.Stance;
import tideover.engine.rules.Topic;
import tideover.engine.rules.Verification;

class RuleBooksTest {

    private static final List<String> NAMES = RuleBooks.NAMES;
    private static final List<String> COUNTRIES = NAMES.subList(1, NAMES.size());

    @ParameterizedTest
    @FieldSource("NAMES")
    void everyLimitCitesADocumentAndBelongsToATopicThatIsCovered(String name) {
        RuleBook rules = RuleBooks.load(name);
        assertThat(rules.country()).isEqualTo(name);
        assertThat(rules.limits()).isNotEmpty().allSatisfy(limit -> {
            assertThat(limit.source().document()).isNotBlank();
            assertThat(limit.source().clause()).isNotBlank();
            assertThat(rules.stance(Topic.findByLimit(limit.id()).orElseThrow()))
                    .isNotEqualTo(Stance.UNKNOWN);
        });
    }

    @ParameterizedTest
    @FieldSource("NAMES")
    void nothingIsSaidToBeComparedWithAPrintedStandardThatNobodyBought(String name) {
        assertThat(RuleBooks.load(name).limits())
                .noneMatch(limit -> limit.source().verification() == Verification.COMPARED);
    }

    @Test
    void booksDisagreeOnTheNeutral() {
        assertThat(choices("poles.neutral.TN_S"))
                .containsEntry("DE", "MUST")
                .containsEntry("UK", "MUST")
                .containsEntry("AU", "MUST_NOT")
                .containsEntry("AT", "ASK_OPERATOR");
        assertThat(choices("poles.neutral.TN_C_S")).containsEntry("DE", "MAY").containsEntry("AU", "MUST_NOT");
        assertThat(choices("link.networkEarthInIsland"))
                .containsEntry("UK", "MAY_NOT")
                .containsEntry("AU", "MAY");
    }

    @ParameterizedTest
    @CsvSource({
        // IEC 60364-6:2016 D.6.4.3.7.2: two thirds; B16 at 230 V: 1.917 Ω
        "IEC, 230, 80, 1.917",
        "DE, 230, 80, 1.917",
        // BS 7671 Appendix 3: 0.8 of the 2.731 Ω of table 41.3
        "UK, 230, 80, 2.185"
    })
    void booksDisagreeOnMeasuredLoops(String book, double voltageV, double currentA, double expectedOhm) {
        double factor = limit(book, "fault.measuredLoopFactor").requireNumber();
        assertThat(factor * voltageV / currentA).isCloseTo(expectedOhm, within(0.0005));
    }

    @ParameterizedTest
    @CsvSource({"IEC, 30", "DE, 25", "UK, 30", "AU, 40"})
    void booksDisagreeOnTheTemperatureOfAnUnstatedSurrounding(String book, double expectedDegC) {
        assertThat(limit(book, "ampacity.referenceAmbientDegC").requireNumber()).isEqualTo(expectedDegC);
    }

    @Test
    void whereNothingIsKnownNothingIsTakenFromIecBySilence() {
        RuleBook austria = RuleBooks.load("AT");
        assertThat(austria.stance(Topic.POLES)).isEqualTo(Stance.ASK_OPERATOR);
        assertThat(austria.stance(Topic.RCD)).isEqualTo(Stance.UNKNOWN);
        assertThat(austria.limits())
                .extracting(
                        limit -> austria.stance(Topic.findByLimit(limit.id()).orElseThrow()))
                .doesNotContain(Stance.UNKNOWN);
        assertThat(austria.find("rcd.touchVoltageV")).isEmpty();
    }

    @Test
    void aCountryWithoutABookIsCoveredByNone() {
        RuleBook none = RuleBooks.load("NO");
        assertThat(none.limits()).isEmpty();
        assertThat(Topic.values()).allMatch(topic -> none.stance(topic) == Stance.UNKNOWN);
    }

    @Test
    void aCountryOverridesIecAndKeepsTheRest() {
        RuleBook germany = RuleBooks.load("DE");
        assertThat(germany.layers()).containsExactly("IEC", "DE");
        assertThat(germany.find("rcd.typeAc"))
                .get()
                .extracting(Limit::choice, Limit::book)
                .containsExactly("NOT_ALLOWED", "DE");
        assertThat(germany.find("rcd.touchVoltageV"))
                .get()
                .extracting(Limit::number, Limit::book)
                .containsExactly(50.0, "IEC");
    }

    @Test
    void greatBritainGoesByTheBookOfTheUnitedKingdom() {
        assertThat(RuleBooks.load("GB").digest()).isEqualTo(RuleBooks.load("UK").digest());
        assertThat(RuleBooks.load("GB").country()).isEqualTo("UK");
    }

    @Test
    void booksDifferInTheirDigest() {
        assertThat(NAMES.stream().map(name -> RuleBooks.load(name).digest())).doesNotHaveDuplicates();
    }

    private static Map<String, String> choices(String id) {
        return Stream.of("DE", "UK", "AU", "AT")
                .filter(country -> RuleBooks.load(country).find(id).isPresent())
                .collect(Collectors.toMap(
                        Function.identity(),
                        country -> String.valueOf(limit(country, id).choice())));
    }

    private static Limit limit(String book, String id) {
        return RuleBooks.load(book).find(id).orElseThrow();
    }
}
