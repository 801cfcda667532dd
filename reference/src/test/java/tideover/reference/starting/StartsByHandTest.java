package tideover.reference.starting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.assessment.Assessor;
import tideover.engine.assessment.Studies;
import tideover.engine.network.StartTable;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.Source;
import tideover.engine.rules.Verification;
import tideover.engine.site.Board;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Site;
import tideover.engine.site.StartKind;
import tideover.engine.site.ThingId;
import tideover.engine.starting.Bound;
import tideover.engine.starting.Dips;
import tideover.engine.starting.LargestStart;
import tideover.engine.starting.Starts;
import tideover.files.tables.TableFiles;
import tideover.reference.Houses;

/**
 * Starts calculated by hand. The heat pump takes 3600 W on three lines, 5.2174 A; started directly its cos φ counts as 0.7,
 * sin φ 0.71414. The inverter gives 14.5 A on a line for good, 1.25 times that for 10 s and 1.5 times for 0.5 s. L1 and L2 are
 * loaded to what it gives beside the heat pump: 14.5 A − 5.2174 A = 9.2826 A at cos φ 1.
 */
class StartsByHandTest {

    private static final Path HOUSE = Path.of("src/test/resources/tideover/reference/checks/house.yaml");

    /** 4 · 5.2174 A = 20.870 A: √((9.2826 + 0.7 · 20.870)² + (0.71414 · 20.870)²) = 28.159 A of 1.5 · 14.5 A. */
    @Test
    void startIsAddedToWhatTheHouseDrawsByItsPowerFactor() {
        Finding finding = finding("start.current", "heat-pump", direct(4, 0.5));
        assertThat(finding.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(finding.measure().value()).isCloseTo(28.159, within(0.0005));
        assertThat(finding.measure().limit()).isCloseTo(21.75, within(1e-9));
    }

    /**
     * The largest start x with x² + 2 · 0.7 · 9.2826 x + 9.2826² = I²: for 1.5 · 14.5 A 14.217 A, 2.7250 times the running
     * current; for 1.25 · 14.5 A 10.371 A, 1.9878 times; for 14.5 A 6.3981 A, 1.2263 times. The curve counts as steps.
     */
    @ParameterizedTest(name = "{0} times for {1} s: {2}")
    @CsvSource({
        "2.72, 0.3,  MET",
        "2.72, 0.5,  MET",
        "2.73, 0.5,  NOT_MET",
        "1.98, 0.51, MET",
        "1.99, 0.51, NOT_MET",
        "1.98, 10,   MET",
        "1.22, 10.1, MET",
        "1.23, 10.1, NOT_MET"
    })
    void startLastsNoLongerThanTheStepOfTheOverloadCurveItNeeds(double ratio, double timeS, Outcome expected) {
        assertThat(finding("start.current", "heat-pump", direct(ratio, timeS)).outcome())
                .isEqualTo(expected);
    }

    /** Nothing stated: 8 times at worst is too much, 3 times at best is too much as well for 1.5 times; 2 times is not. */
    @ParameterizedTest(name = "overload {0} times: {1}")
    @CsvSource({"1.5, NOT_MET", "2, OPEN", "4, MET"})
    void multipleNobodyHasStatedIsTakenFromTheTableAtBothEnds(double overloadRatio, Outcome expected) {
        List<String> edits = List.of(
                "heat-pump.load.start: DIRECT",
                "heat-pump.load.startCurrentRatio: null",
                "heat-pump.load.startTimeS: null",
                "inverter.overload: [{currentRatio: %s, timeS: 5}]".formatted(overloadRatio));
        assertThat(finding("start.current", "heat-pump", edits).outcome()).isEqualTo(expected);
    }

    /**
     * Alone in the island: the motor is 230 V / 20.870 A = 11.021 Ω at cos φ 0.7, (7.7146 + j 7.8705) Ω; before it lie 6 m of
     * 4 mm² and 20 m of 2.5 mm², 0.034181 Ω + 0.18314 Ω (figures of the checks by hand). At the motor
     * 230 V · 11.021 / |7.9319 + j 7.8705| = 226.847 V, at the board 230 V · |7.8977 + j 7.8705| / |7.9319 + j 7.8705| = 229.50 V.
     */
    @Test
    void voltageOfMotorAndBoardIsThatOfTheDivider() {
        List<String> edits = new ArrayList<>(direct(4, 0.5));
        for (String other : List.of("kitchen", "oven", "lights", "workshop")) edits.add(other + ".load.powerW: 1");
        Studies studies = studies(Houses.with(HOUSE, edits));
        Dips.Solved dips = (Dips.Solved)
                studies.starts().dips(circuit(studies, "heat-pump"), OperatingState.ISLAND_GRID_DEAD, Bound.WORST);
        // The other circuits draw 4 mA each.
        assertThat(dip(dips, "heat-pump").duringV()).isCloseTo(226.847, within(0.005));
        assertThat(dip(dips, "main-board").duringV()).isCloseTo(229.50, within(0.005));
    }

    @ParameterizedTest
    @CsvSource({"1, 2.5", "20, 1.5", "80, 2.5", "80, 10"})
    void softStartNeverDipsMoreThanADirectOne(double lengthM, double crossSectionMm2) {
        double direct = largestDipV(StartKind.DIRECT, lengthM, crossSectionMm2);
        double starDelta = largestDipV(StartKind.STAR_DELTA, lengthM, crossSectionMm2);
        double soft = largestDipV(StartKind.SOFT, lengthM, crossSectionMm2);
        assertThat(soft).isPositive().isLessThan(direct);
        assertThat(starDelta).isPositive().isLessThan(direct);
    }

    private static double largestDipV(StartKind start, double lengthM, double crossSectionMm2) {
        Studies studies = studies(Houses.with(
                HOUSE,
                List.of(
                        "heat-pump.load.start: " + start,
                        "heat-pump.load.startCurrentRatio: null",
                        "heat-pump.load.startTimeS: null",
                        "heat-pump.cable.lengthM: " + lengthM,
                        "heat-pump.cable.crossSectionMm2: " + crossSectionMm2)));
        Dips dips = studies.starts().dips(circuit(studies, "heat-pump"), OperatingState.CONNECTED, Bound.WORST);
        Dips.Dip largest = ((Dips.Solved) dips).all().get(0);
        return largest.beforeV() - largest.duringV();
    }

    /**
     * Electrical Installation Guide, chapter G, drop by length and current: three-phase, copper 35 mm², cos φ 0.35 at the start
     * of a motor, 0.52 V per A and km between lines (from memory). Printed to 0.01, so half of that; the guide leaves out the
     * angle between both ends, at 50 A less than 1 % of the drop.
     */
    @Test
    void dropOfAStartIsThatOfTheHandbook() {
        List<String> edits = List.of(
                "heat-pump.load.start: DIRECT",
                "heat-pump.load.startCurrentRatio: 5",
                "heat-pump.load.startTimeS: 0.5",
                "heat-pump.load.powerW: 6900",
                "heat-pump.cable.crossSectionMm2: 35",
                "heat-pump.cable.lengthM: 50");
        Studies studies = studies(Houses.with(HOUSE, edits));
        Dips.Solved dips = (Dips.Solved)
                starts(studies, 0.35).dips(circuit(studies, "heat-pump"), OperatingState.ISLAND_GRID_DEAD, Bound.WORST);
        double motorV = dip(dips, "heat-pump").duringV();
        double dropV = Math.sqrt(3) * (dip(dips, "main-board").duringV() - motorV);
        double currentA = 50 * motorV / 230;
        assertThat(dropV / currentA / 0.05).isCloseTo(0.52, within(0.005 + 0.0052));
    }

    /**
     * Without the heat pump L1 carries the kitchen in full and the workshop by its share, 8.6957 A + 0.4 · 6.5217 A = 11.304 A,
     * L2 the oven, 12.174 A; an eighth of the start stays below what is left. x² + 1.4 · 11.304 x + 11.304² = 21.75² gives
     * 12.283 A on L1; 12.174 A in its place gives 11.415 A on all three lines.
     */
    @ParameterizedTest
    @CsvSource({"inverter", "main-board"})
    void largestStartIsTheOneThatJustSucceeds(String place) {
        Studies studies = studies(Houses.with(HOUSE, List.of("without heat-pump")));
        Fed at = studies.installation().findFed(new ThingId(place)).orElseThrow();
        Starts starts = starts(studies, 0.7);
        LargestStart onOne = starts.largest(at, List.of(Conductor.L1), StartKind.DIRECT, 0.15);
        LargestStart onThree =
                starts.largest(at, List.of(Conductor.L1, Conductor.L2, Conductor.L3), StartKind.DIRECT, 0.15);
        assertThat(onOne.startA()).isCloseTo(12.283, within(0.001));
        assertThat(onThree.startA()).isCloseTo(11.415, within(0.001));
        assertThat(List.of(onOne.limitedBy(), onThree.limitedBy())).containsOnly(LargestStart.LimitedBy.SOURCE);
    }

    /** A board at the end of a long thin feeder: a tenth of the voltage is lost long before the inverter gives up. */
    @Test
    void dipLimitsTheLargestStartBehindALongFeeder() {
        Studies studies = studies(Houses.with(HOUSE, List.of("annex-board.cable.lengthM: 300")));
        Board annex =
                (Board) studies.installation().find(new ThingId("annex-board")).orElseThrow();
        LargestStart near = studies.starts().largest(annex, List.of(Conductor.L1), StartKind.DIRECT, 1);
        LargestStart far = studies.starts().largest(annex, List.of(Conductor.L1), StartKind.DIRECT, 0.02);
        assertThat(near.limitedBy()).isEqualTo(LargestStart.LimitedBy.SOURCE);
        assertThat(far.limitedBy()).isEqualTo(LargestStart.LimitedBy.DIP);
        assertThat(far.startA()).isLessThan(near.startA());
    }

    private static Starts starts(Studies studies, double startPowerFactorRatio) {
        StartTable table = new StartTable(Stream.of(StartKind.values())
                .map(start -> new StartTable.Row(
                        start,
                        8,
                        8,
                        0.5,
                        0.5,
                        startPowerFactorRatio,
                        startPowerFactorRatio,
                        new Source("test", "none", Verification.OWN_CHOICE)))
                .toList());
        return new Starts(studies.installation(), studies.demand(), studies.flow(), table);
    }

    private static List<String> direct(double ratio, double timeS) {
        return List.of(
                "heat-pump.load.start: DIRECT",
                "heat-pump.load.startCurrentRatio: " + ratio,
                "heat-pump.load.startTimeS: " + timeS);
    }

    private static Studies studies(Site site) {
        return new Assessor(TableFiles.load()).studies(site, Houses.rules(site));
    }

    private static Circuit circuit(Studies studies, String id) {
        return (Circuit) studies.installation().find(new ThingId(id)).orElseThrow();
    }

    private static Dips.Dip dip(Dips.Solved dips, String place) {
        return dips.all().stream()
                .filter(dip -> dip.place().text().equals(place))
                .findFirst()
                .orElseThrow();
    }

    private static Finding finding(String check, String place, List<String> edits) {
        return Houses.assess(Houses.with(HOUSE, edits)).findings().stream()
                .filter(finding -> finding.key().check().equals(check))
                .filter(finding -> finding.key().place().text().equals(place))
                .findFirst()
                .orElseThrow();
    }
}
