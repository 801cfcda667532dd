package tideover.reference.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Finding;
import tideover.engine.rules.FindingKey;
import tideover.engine.rules.Outcome;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.FactId;
import tideover.engine.site.Site;
import tideover.engine.site.ThingId;
import tideover.reference.GeneratedSites;
import tideover.reference.Houses;

/** Houses that nobody would build, or that are known only in part: judged all the same, and never by an exception. */
class HostileSitesTest {

    private static final Path HOUSE = Path.of("src/test/resources/tideover/reference/checks/house.yaml");

    static Stream<Arguments> houses() {
        return Stream.of(
                Arguments.of(
                        "nothing but a supply",
                        "format: 1\nhouse: {place: {country: DE}, supply: {earthingSystem: TT}}"),
                Arguments.of("nothing at all is known", "format: 1\nhouse: {place: {country: DE}}"),
                Arguments.of("a country without a rule book", "format: 1\nhouse: {place: {country: NO}}"),
                Arguments.of("things of which only the id is known", """
                        format: 1
                        house:
                          place: {country: DE}
                          meters: [{id: meter}]
                          boards: [{id: board}]
                          rcdGroups: [{id: group}]
                          circuits: [{id: circuit}, {id: other}]
                          electrodes: [{id: electrode}]
                        plan:
                          protectiveDevices: [{id: fuse}]
                          islandingSwitches: [{id: switch}]
                          neutralEarthSwitches: [{id: link-switch}]
                          neutralEarthLinks: [{id: link}]
                          byPasses: [{id: by-pass}]
                          inverters: [{id: inverter}, {id: former, role: GRID_FORMING}]
                          batteries: [{id: battery}]
                          pvArrays: [{id: pv}]
                          isolators: [{id: isolator}]
                          notices: [{id: notice}]
                        """),
                Arguments.of("two switches in series", """
                        format: 1
                        house: {place: {country: DE}, supply: {earthingSystem: TN_S, lines: THREE}}
                        plan:
                          islandingSwitches:
                            - {id: one, fedFrom: supply, conductors: [L1, L2, L3, N, PE], poles: 4}
                            - {id: two, fedFrom: one, conductors: [L1, L2, L3, N, PE], poles: 3}
                          boards: [{id: board, fedFrom: two, conductors: [L1, L2, L3, N, PE]}]
                          circuits: [{id: circuit, fedFrom: board, conductors: [L2, N, PE]}]
                          inverters: [{id: inverter, fedFrom: board, conductors: [L1, L2, L3, N, PE], role: GRID_FORMING}]
                        """),
                Arguments.of("two grid-forming inverters, one on each side", """
                        format: 1
                        house: {place: {country: GB}, supply: {earthingSystem: TN_C_S, lines: ONE, penSplitAt: supply}}
                        plan:
                          islandingSwitches: [{id: switch, fedFrom: supply, conductors: [L1, N, PE], poles: 1}]
                          circuits: [{id: circuit, fedFrom: switch, conductors: [L1, N, PE]}]
                          inverters:
                            - {id: island, fedFrom: switch, conductors: [L1, N, PE], role: GRID_FORMING}
                            - {id: grid, fedFrom: supply, conductors: [L1, N, PE], role: GRID_FORMING}
                        """),
                Arguments.of("a circuit without neutral and without protective conductor", """
                        format: 1
                        house:
                          place: {country: DE}
                          supply: {earthingSystem: TN_S, lines: THREE}
                          circuits:
                            - {id: phases, fedFrom: supply, conductors: [L1, L2], load: {kind: SOCKETS, powerW: 100}}
                        """),
                Arguments.of("a circuit on a line that nobody brings", """
                        format: 1
                        house:
                          place: {country: DE}
                          supply: {earthingSystem: TT, lines: ONE}
                          circuits: [{id: third, fedFrom: supply, conductors: [L3, N, PE], load: {kind: SOCKETS}}]
                        """),
                Arguments.of("fed from a circuit and from an inverter", """
                        format: 1
                        house: {place: {country: DE}, supply: {earthingSystem: TN_S, lines: THREE}}
                        plan:
                          inverters: [{id: inverter, fedFrom: supply, conductors: [L1, L2, L3, N, PE], role: GRID_FORMING}]
                          boards: [{id: board, fedFrom: inverter, conductors: [L1, L2, L3, N, PE]}]
                          circuits:
                            - {id: one, fedFrom: board, conductors: [L1, N, PE]}
                            - {id: two, fedFrom: one, conductors: [L1, N, PE]}
                        """));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("houses")
    void isJudged(String name, String yaml) {
        assertSound(Houses.of(yaml));
    }

    @Test
    void houseOfWhichNothingIsKnownIsOpenNotMet() {
        Assessment assessment = Houses.assess(Houses.of("""
                format: 1
                house:
                  place: {country: DE}
                  circuits: [{id: circuit}]
                plan:
                  islandingSwitches: [{id: switch}]
                  inverters: [{id: inverter, role: GRID_FORMING}]
                """));
        assertThat(assessment.verdict().outcome()).isIn(Outcome.OPEN, Outcome.NOT_MET);
        assertThat(assessment.findings())
                .filteredOn(finding -> finding.key().check().matches("(poles|link|neutral|rcd|fault)\\..*"))
                .noneMatch(finding -> finding.outcome() == Outcome.MET);
    }

    @ParameterizedTest
    @EnumSource(EarthingSystem.class)
    void eachEarthingSystemIsJudged(EarthingSystem system) {
        assertSound(Houses.read(HOUSE).with(FactId.of("supply.earthingSystem"), system));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"islanding-switch", "inverter", "backup-fuse", "main-board", "electrode", "neutral-earth-switch"
            })
    void isJudgedWithoutThatThing(String id) {
        assertSound(Houses.read(HOUSE).without(Set.of(new ThingId(id))));
    }

    /** Each fact of a house forgotten, one at a time: then two, then three at once. */
    @Test
    void isJudgedWithoutAnyOfItsFacts() {
        Site site = Houses.read(HOUSE);
        List<FactId> facts = Houses.facts(site);
        assertThat(facts).hasSizeGreaterThan(200);
        for (int i = 0; i < facts.size(); i++) {
            Site less = site.with(facts.get(i), null);
            assertSound(less);
            less = less.with(facts.get((i * 7 + 3) % facts.size()), null);
            assertSound(less.with(facts.get((i * 13 + 5) % facts.size()), null));
        }
    }

    @Test
    @Tag("slow")
    void threeThousandHousesDrawnBySeedAreJudged() {
        for (long seed = 1; seed <= 3000; seed++) {
            try {
                assertSound(GeneratedSites.site(seed));
            } catch (RuntimeException | AssertionError e) {
                throw new AssertionError("house of seed " + seed, e);
            }
        }
    }

    /** Judged, explained, and each number a number. */
    static void assertSound(Site site) {
        Assessment assessment = Houses.explain(site);
        Set<FindingKey> keys = new HashSet<>();
        for (Finding finding : assessment.findings()) {
            if (!keys.add(finding.key())) throw new AssertionError("found twice: " + finding);
            if (finding.measure() != null
                    && (Double.isNaN(finding.measure().value())
                            || Double.isNaN(finding.measure().limit())))
                throw new AssertionError("no number in " + finding);
        }
    }
}
