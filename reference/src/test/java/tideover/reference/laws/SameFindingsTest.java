package tideover.reference.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Finding;
import tideover.engine.rules.FindingKey;
import tideover.engine.site.House;
import tideover.engine.site.Plan;
import tideover.engine.site.Site;
import tideover.engine.site.Thing;
import tideover.reference.GeneratedSites;
import tideover.reference.Houses;

/** What must make no difference to a verdict. */
class SameFindingsTest {

    static List<Path> all() {
        return Houses.all();
    }

    static List<Path> threeLines() {
        return Houses.threeLines();
    }

    /** L1, L2 and L3 are names: with each conductor on the next line the house is as good or bad as before. */
    @ParameterizedTest
    @MethodSource("threeLines")
    void turningAllLinesByOneChangesNothing(Path house) {
        Assessment before = Houses.assess(Houses.read(house));
        assertThat(outcomes(Houses.assess(Houses.turned(house)))).isEqualTo(outcomes(before));
    }

    @ParameterizedTest
    @MethodSource("all")
    void orderOfThingsInTheFileChangesNothing(Path house) {
        Site site = Houses.read(house);
        Map<FindingKey, String> before = outcomes(Houses.assess(site));
        assertThat(outcomes(Houses.assess(shuffled(site, new Random(1))))).isEqualTo(before);
    }

    @Test
    void orderChangesNothingInHousesDrawnBySeedEither() {
        for (long seed = 1; seed <= 100; seed++) {
            Site site = GeneratedSites.site(seed);
            assertThat(outcomes(Houses.assess(shuffled(site, new Random(seed)))))
                    .as("house of seed %d", seed)
                    .isEqualTo(outcomes(Houses.assess(site)));
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void judgingTwiceGivesTheSame(Path house) {
        Site site = Houses.read(house);
        assertThat(Houses.assess(site).findings()).isEqualTo(Houses.assess(site).findings());
    }

    @ParameterizedTest
    @MethodSource("all")
    void explainingChangesNoFindingAndShowsHowEachNumberCameAbout(Path house) {
        Site site = Houses.read(house);
        Assessment explained = Houses.explain(site);
        assertThat(explained.findings()).isEqualTo(Houses.assess(site).findings());
        assertThat(explained.findings())
                .filteredOn(finding -> finding.measure() != null)
                .filteredOn(finding ->
                        finding.key().check().matches("fault\\.disconnection|overload\\.design|switch\\.load"))
                .allSatisfy(finding -> assertThat(explained.calculations().get(finding.key()))
                        .as(finding.key().toString())
                        .isNotEmpty());
    }

    @Test
    void townHouseShowsHowFiftyNumbersCameAbout() {
        assertThat(Houses.explain(Houses.read(Houses.TOWN_HOUSE)).calculations().values())
                .filteredOn(lines -> !lines.isEmpty())
                .hasSizeGreaterThan(50);
    }

    /** One key, one finding: the file beside an example and the JSON name them by it. */
    @ParameterizedTest
    @MethodSource("all")
    void noTwoFindingsHaveTheSameKey(Path house) {
        List<FindingKey> keys = Houses.assess(Houses.read(house)).findings().stream()
                .map(Finding::key)
                .toList();
        assertThat(new TreeSet<>(keys)).containsExactlyElementsOf(keys);
    }

    private static Site shuffled(Site site, Random random) {
        House house = site.house();
        List<Thing> found = new ArrayList<>(house.things());
        List<Thing> planned = new ArrayList<>(site.plan().things());
        Collections.shuffle(found, random);
        Collections.shuffle(planned, random);
        return new Site(
                new House(house.place(), house.gridOperator(), house.supply(), found),
                new Plan(planned, site.plan().removed(), site.plan().accepted()),
                site.built(),
                site.evidence());
    }

    /** Outcome and value of each finding; a value may differ in its last digits where numbers are added in another order. */
    private static Map<FindingKey, String> outcomes(Assessment assessment) {
        return assessment.findings().stream().collect(Collectors.toMap(Finding::key, SameFindingsTest::outcome));
    }

    private static String outcome(Finding finding) {
        // Below a millionth there is only the insulation of what nobody earthed, and the solver's residual.
        Function<Double, String> rounded = value -> "%.6g".formatted(Math.rint(value * 1e6) / 1e6);
        Finding.Measure measure = finding.measure();
        return finding.outcome()
                + (measure == null ? "" : " " + rounded.apply(measure.value()) + " " + rounded.apply(measure.limit()));
    }
}
