package tideover.reference.first;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.assessment.Assessment;
import tideover.engine.assessment.Assessor;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.Topic;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Origin;
import tideover.engine.site.Site;
import tideover.engine.site.SupplyLines;
import tideover.files.FieldTable;
import tideover.files.SiteFileResult;
import tideover.files.SiteWriter;
import tideover.files.first.FirstAnswers;
import tideover.files.first.FirstAnswers.SourceIs;
import tideover.files.first.FirstSite;
import tideover.files.rules.RuleBooks;
import tideover.files.tables.TableFiles;
import tideover.files.tables.TypicalLoad;
import tideover.files.tables.TypicalLoad.Habit;
import tideover.files.tables.TypicalValues;

/** What five answers may promise: a plan to begin with, and nothing about safety on assumptions. */
class FirstVisitJudgedTest {
    private static final FieldTable FIELDS = FieldTable.load();
    private static final TypicalValues TYPICAL = TypicalValues.load();
    private static final Assessor ASSESSOR = new Assessor(TableFiles.load());
    private static final Set<Topic> NEVER_ON_ASSUMPTIONS = Set.of(Topic.POLES, Topic.NEUTRAL_EARTH_LINK, Topic.RCD);

    static Stream<Arguments> houses() {
        return Stream.of("DE", "GB", "AT", "AU", "FR")
                .flatMap(country -> Stream.of(
                                null,
                                EarthingSystem.TN_S,
                                EarthingSystem.TN_C_S,
                                EarthingSystem.TN_C,
                                EarthingSystem.TT)
                        .flatMap(earthing -> Stream.of(SupplyLines.ONE, SupplyLines.THREE)
                                .map(lines -> Arguments.of(country, earthing, lines))));
    }

    /** Circuits with a PEN cannot stay on as they are, whatever the plan. */
    static Stream<Arguments> housesWithNeutral() {
        return houses().filter(house -> house.get()[1] != EarthingSystem.TN_C);
    }

    @ParameterizedTest(name = "{0}, {1}, {2}")
    @MethodSource("houses")
    void nothingAboutSeparationLinkOrRcdsIsMetOnWhatWasOnlyAssumed(
            String country, @Nullable EarthingSystem earthing, SupplyLines lines) {
        Assessment judged = judge(first(country, earthing, lines, Origin.READ));
        List<Finding> concerned = judged.findings().stream()
                .filter(finding -> Topic.findByLimit(finding.key().check())
                        .filter(NEVER_ON_ASSUMPTIONS::contains)
                        .isPresent())
                .toList();
        assertThat(concerned).isNotEmpty();
        assertThat(concerned)
                .filteredOn(finding -> finding.outcome() == Outcome.MET)
                .allSatisfy(finding -> assertThat(finding.assumptions())
                        .as(finding.key().toString())
                        .isEmpty());
        assertThat(judged.verdict().outcome()).isNotEqualTo(Outcome.MET);
    }

    @ParameterizedTest(name = "{0}, {1}, {2}")
    @MethodSource("housesWithNeutral")
    void thePlanOfAUsualHouseBreaksNoRule(String country, @Nullable EarthingSystem earthing, SupplyLines lines) {
        Assessment judged = judge(first(country, earthing, lines, Origin.READ));
        assertThat(judged.findings())
                .filteredOn(finding -> finding.isBlocking() && finding.outcome() == Outcome.NOT_MET)
                .extracting(finding -> finding.key().toString())
                .isEmpty();
    }

    @Test
    void aPenThatGoesThroughToTheCircuitsIsToldAsWhatStandsInTheWay() {
        Assessment judged = judge(first("DE", EarthingSystem.TN_C, SupplyLines.THREE, Origin.READ));
        assertThat(judged.findings())
                .filteredOn(finding -> finding.key().check().equals("rcd.additional"))
                .extracting(Finding::outcome)
                .contains(Outcome.NOT_MET);
    }

    @Test
    void whatComesOfTheAnswersIsTheSameSiteAgainFromItsFile() {
        Site site = first("DE", EarthingSystem.TT, SupplyLines.THREE, Origin.DECLARED_BY_CUSTOMER);
        SiteWriter writer = new SiteWriter(FIELDS);
        var again = new tideover.files.SiteFiles(FIELDS)
                .read("first", writer.yaml(site).getBytes(java.nio.charset.StandardCharsets.UTF_8));
        assertThat(writer.digest(((SiteFileResult.Readable) again).site())).isEqualTo(writer.digest(site));
    }

    private static Assessment judge(Site site) {
        return ASSESSOR.assessAtOnce(
                site, RuleBooks.load(String.valueOf(site.house().place().country())));
    }

    private static Site first(String country, @Nullable EarthingSystem earthing, SupplyLines lines, Origin origin) {
        List<String> usual = loads(Habit.YES, Habit.NO);
        SiteFileResult result = new FirstSite(FIELDS, TYPICAL, id -> id)
                .of(new FirstAnswers(
                        "Probeweg 3",
                        country,
                        origin,
                        earthing,
                        lines,
                        63.0,
                        usual,
                        loads(Habit.YES),
                        6000.0,
                        10_000.0,
                        lines == SupplyLines.ONE ? 4000.0 : 10_000.0,
                        SourceIs.TO_BE_PLANNED,
                        lines));
        return ((SiteFileResult.Readable) result).site();
    }

    /** Ids of usual loads with one of these habits of staying on. */
    private static List<String> loads(Habit... staysOn) {
        return TYPICAL.loads().stream()
                .filter(load -> load.usual() == Habit.YES && List.of(staysOn).contains(load.staysOn()))
                .map(TypicalLoad::id)
                .toList();
    }
}
