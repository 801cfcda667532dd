package tideover.reference.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.assessment.Assessor;
import tideover.engine.rules.Check;
import tideover.engine.rules.Finding;
import tideover.engine.rules.FindingKey;
import tideover.engine.rules.Missing;
import tideover.engine.rules.Outcome;
import tideover.engine.site.Evidence;
import tideover.engine.site.FactId;
import tideover.engine.site.Plan;
import tideover.engine.site.Site;
import tideover.reference.Houses;

/** What a finding may rest on: separation, neutral–earth link and RCD never on an assumption (promise of the design). */
class AssumptionLawsTest {

    private static final Path CHECKS = Path.of("src/test/resources/tideover/reference/checks");

    /** Which checks may be met on an assumption, by id; all others stay open. */
    private static final Map<String, Check<?>> ALL =
            Assessor.checks().stream().collect(Collectors.toMap(Check::id, Function.identity()));

    @Test
    void separationLinkAndRcdStayOpenOnAnAssumption() {
        assertThat(ALL.values())
                .filteredOn(check -> check.id().matches("(poles|link|rcd)\\..*|neutral\\.(side|continuity)"))
                // Selectivity is advice: nobody is hurt by a device too many that trips.
                .filteredOn(check -> !check.id().equals("rcd.selectivity"))
                .hasSizeGreaterThan(14)
                .allMatch(AssumptionLawsTest::staysOpen);
    }

    static List<Path> houses() {
        return List.of(CHECKS.resolve("house.yaml"), CHECKS.resolve("tt-house.yaml"), Houses.TERRACE);
    }

    @ParameterizedTest
    @MethodSource("houses")
    void eachFactOnceOnlyAssumedOpensOrIsNamed(Path house) {
        Site site = Houses.read(house);
        List<Finding> met = Houses.assess(site).findings();
        Set<FactId> facts = new LinkedHashSet<>();
        met.forEach(finding -> facts.addAll(finding.facts()));
        assertThat(facts).hasSizeGreaterThan(60);
        for (FactId fact : facts) {
            Map<FindingKey, Finding> now =
                    byKey(Houses.assess(assumed(site, fact)).findings());
            for (Finding before : met) {
                if (!before.facts().contains(fact)) continue;
                Finding after = now.get(before.key());
                assertThat(after.assumptions())
                        .as("%s on %s", before.key(), fact)
                        .contains(fact);
                if (staysOpen(ALL.get(before.key().check()))) {
                    assertThat(after.outcome())
                            .as("%s on %s", before.key(), fact)
                            .isEqualTo(Outcome.OPEN);
                    assertThat(after.missing()).contains(new Missing.AssumedFact(fact));
                } else {
                    assertThat(after.outcome())
                            .as("%s on %s", before.key(), fact)
                            .isEqualTo(before.outcome());
                }
            }
        }
    }

    /** How things are connected decides where a neutral and an RCD lie: nobody has looked, so nobody can say. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "main-board.conductors, neutral.side kitchen",
        "main-board.conductors, neutral.continuity kitchen",
        "main-board.fedFrom, rcd.place rcd-house",
        "main-board.fedFrom, rcd.additional kitchen",
        "main-board.fedFrom, poles.lines inverter",
        "rcd-house.conductors, neutral.continuity lights",
        "backup-fuse.fedFrom, poles.neutral islanding-switch",
        "annex-board.conductors, link.count inverter",
        "grid-board.conductors, link.count supply",
        "meter-panel.fedFrom, poles.pen meter-panel"
    })
    void assumedWiringLeavesWhatHangsOnItOpen(String fact, String where) {
        assertThat(Houses.assess(assumed(Houses.read(CHECKS.resolve("house.yaml")), FactId.of(fact)))
                        .findings())
                .filteredOn(
                        finding -> (finding.key().check() + " " + finding.key().place()).equals(where))
                .isNotEmpty()
                .allMatch(finding -> finding.missing().contains(new Missing.AssumedFact(FactId.of(fact))));
    }

    /** Whatever else may be met on an assumption names it. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "heat-pump.protection.curve, fault.disconnection heat-pump CONNECTED",
        "heat-pump.protection.ratedCurrentA, fault.disconnection heat-pump CONNECTED",
        "heat-pump.cable.crossSectionMm2, fault.disconnection heat-pump CONNECTED",
        "rcd-house.rcd.delay, fault.disconnection kitchen CONNECTED",
        "rcd-house.rcd.ratedResidualCurrentA, fault.disconnection kitchen ISLAND_GRID_DEAD",
        "inverter.islandVoltageV, fault.disconnection heat-pump ISLAND_GRID_DEAD",
        "inverter.shutOffTimeS, fault.disconnection heat-pump ISLAND_GRID_DEAD",
        "kitchen.cable.ambientDegC, overload.design kitchen -",
        "kitchen.cable.groupedCircuits, overload.design kitchen -",
        "kitchen.cable.insulation, overload.design kitchen -",
        "kitchen.cable.material, overload.design kitchen -",
        "kitchen.load.powerW, overload.design kitchen -",
        "kitchen.cable.method, overload.tripping kitchen -",
        "kitchen.protection.kind, overload.tripping kitchen -",
        "kitchen.load.powerW, switch.load islanding-switch CONNECTED",
        "inverter.feedInPowerW, switch.feedIn islanding-switch CONNECTED",
        "islanding-switch.kind, feedback.kind islanding-switch -",
        "isolator-inverter.isolates, isolation.lockable inverter -",
        "by-pass.leadsTo, bypass.present islanding-switch -",
        "notice-supply.at, notice.present supply -",
        "system-meter.needsMeasuringNeutral, measuring.neutral system-meter -",
        "supply.mainFuse.ratedCurrentA, measuring.rating system-meter -",
        "oven.conductors, neutral.shared kitchen -",
        "grid-board.fedFrom, measuring.coverage system-meter -"
    })
    void assumptionIsNamedByWhatIsMetOnIt(String fact, String key) {
        assertThat(Houses.assess(assumed(Houses.read(CHECKS.resolve("house.yaml")), FactId.of(fact)))
                        .findings())
                .filteredOn(finding -> finding.key().toString().equals(key))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.outcome()).isEqualTo(Outcome.MET);
                    assertThat(finding.assumptions()).contains(FactId.of(fact));
                });
    }

    static List<Path> everyHouse() {
        return Houses.all();
    }

    @ParameterizedTest
    @MethodSource("everyHouse")
    void whatIsJudgedNamesWhereItsLimitStands(Path house) {
        assertThat(Houses.assess(Houses.read(house)).findings())
                .filteredOn(finding -> finding.outcome() != Outcome.OPEN)
                .isNotEmpty()
                .allMatch(finding -> finding.source() != null);
    }

    static List<Path> troubled() {
        return Houses.yamlBelow(Houses.EXAMPLES.resolve("troubled"));
    }

    /** A wrong neutral that nobody states is taken where the lines are: there is no fact any more that says otherwise. */
    private static final Set<String> SAYS_MORE = Set.of("neutralFrom");

    @ParameterizedTest
    @MethodSource("troubled")
    void forgettingAFactNeverMendsAMistake(Path house) {
        Site site = Houses.read(house);
        for (Finding broken : Houses.assess(site).findings()) {
            if (broken.outcome() != Outcome.NOT_MET) continue;
            for (FactId fact : broken.facts()) {
                if (SAYS_MORE.contains(fact.field())) continue;
                assertThat(Houses.assess(forgotten(site, fact)).findings())
                        .as("%s without %s", broken.key(), fact)
                        .filteredOn(finding -> finding.key().equals(broken.key()))
                        .noneMatch(finding -> finding.outcome() == Outcome.MET);
            }
        }
    }

    /** Not stated means that there is none: a measuring neutral or an end resistor can be seen to be missing. */
    private static final Set<String> NONE_IF_NOT_STATED =
            Set.of("measuringNeutralFrom", "terminationOhm", "biasOhm", "passThrough", "gridMeter", "builtInto");

    @ParameterizedTest
    @MethodSource("houses")
    void whatNobodyKnowsIsNeverCalledAMistake(Path house) {
        Site site = Houses.read(house);
        for (FactId fact : Houses.facts(site)) {
            if (NONE_IF_NOT_STATED.contains(fact.field())) continue;
            assertThat(Houses.assess(forgotten(site, fact)).findings())
                    .as("without %s", fact)
                    .noneMatch(finding -> finding.outcome() == Outcome.NOT_MET && finding.accepted() == null);
        }
    }

    private static boolean staysOpen(Check<?> check) {
        return check.onAssumption() == Check.OnAssumption.STAYS_OPEN;
    }

    private static Site assumed(Site site, FactId fact) {
        List<Evidence> evidence = new ArrayList<>(site.evidence());
        evidence.removeIf(said -> said.about().equals(fact.toString()));
        evidence.add(Evidence.assumed(fact));
        return new Site(site.house(), site.plan(), site.built(), evidence);
    }

    /** Neither the plan nor the house states the fact any more. */
    private static Site forgotten(Site site, FactId fact) {
        Site once = site.with(fact, null);
        boolean inPlan =
                site.plan().things().stream().anyMatch(thing -> thing.id().equals(fact.thing()));
        boolean inHouse =
                site.house().things().stream().anyMatch(thing -> thing.id().equals(fact.thing()));
        if (!inPlan || !inHouse) return once;
        Site found = new Site(site.house(), new Plan(List.of(), List.of(), List.of()), List.of());
        return new Site(found.with(fact, null).house(), once.plan(), once.built(), once.evidence());
    }

    private static Map<FindingKey, Finding> byKey(List<Finding> findings) {
        return findings.stream().collect(Collectors.toMap(Finding::key, Function.identity()));
    }
}
