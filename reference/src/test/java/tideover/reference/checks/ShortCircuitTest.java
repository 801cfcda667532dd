package tideover.reference.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Outcome;
import tideover.engine.site.Site;
import tideover.reference.Houses;

/**
 * Short circuits by hand. The largest grid voltage is 1.1 · 230 V = 253 V; 1500 A at the connection point are 0.168667 Ω a
 * line. Copper is at 20 °C: 16 mm² 1.15 Ω/km, 2.5 mm² 7.41 Ω/km (IEC 60228). The inverter adds its 24 A.
 */
class ShortCircuitTest {

    private static final Path HOUSE = Path.of("src/test/resources/tideover/reference/checks/house.yaml");

    /**
     * 40 m of 16 mm² before the meter panel are 0.046 Ω: 253 V / 0.214667 Ω = 1178.6 A, and 24 A: 1202.6 A. Only the
     * connection point is looked at where the device bears what flows there: 1500 A and 24 A.
     */
    @ParameterizedTest(name = "{0} A are borne, {1} A may flow")
    @CsvSource({"1100, 1202.6", "1400, 1202.6", "1600, 1524"})
    void largestCurrentBehindACable(double conditionalA, double expectedA) {
        Finding finding = finding(
                "shortCircuit.board main-board -",
                "meter-panel.cable: {lengthM: 40, crossSectionMm2: 16, method: C}",
                "main-board.conditionalShortCircuitCurrentA: " + conditionalA);
        assertThat(finding.measure().value()).isCloseTo(expectedA, within(0.05));
    }

    /**
     * The k²S² of copper in PVC as a handbook prints it in 10⁶ A²s, to four figures that it cuts off. A breaker of
     * IEC 60947-2 is never deemed to protect, so that the withstand is always asked for.
     */
    @ParameterizedTest(name = "{0} mm²: {1}")
    @CsvSource({
        "1.5, 0.0297, 'Electrical Installation Guide, ch. G, largest thermal stress of cables; from memory'",
        "2.5, 0.0826, the same",
        "4, 0.2116, the same",
        "6, 0.4761, the same",
        "10, 1.3225, the same"
    })
    void withstandOfConductors(double crossSectionMm2, double printed, String source) {
        Finding finding = finding(
                "shortCircuit.conductor kitchen -",
                "kitchen.protection.kind: CIRCUIT_BREAKER",
                "kitchen.cable.crossSectionMm2: " + crossSectionMm2);
        assertThat(finding.measure().limit()).as(source).isBetween(printed * 1e6, (printed + 0.0001) * 1e6);
    }

    /**
     * EN 60898-1, Annex ZA: 6 kA, up to 16 A, curve B: 35 kA²s in class 3, 100 kA²s in class 2; 2.5 mm² bear
     * (115 · 2.5)² = 82.66 kA²s, 4 mm² 211.6. In an insulated wall neither carries its breaker, so nothing is deemed. Class 1
     * promises nothing: 1524 A for the 0.1 s of IEC 60898-1, test e.
     */
    @ParameterizedTest(name = "class {0}, {1} mm²: {2} A²s, {3}")
    @CsvSource({"3, 2.5, 35000, MET", "2, 2.5, 100000, NOT_MET", "2, 4, 100000, MET", "1, 2.5, 232257.6, NOT_MET"})
    void letThroughAgainstWithstand(int limitingClass, double crossSectionMm2, Double expectedA2s, Outcome expected) {
        Finding finding = finding(
                "shortCircuit.conductor kitchen -",
                "kitchen.cable.method: A2",
                "kitchen.cable.groupedCircuits: 9",
                "kitchen.cable.crossSectionMm2: " + crossSectionMm2,
                "kitchen.protection.energyLimitingClass: " + limitingClass);
        assertThat(finding.outcome()).isEqualTo(expected);
        if (expectedA2s != null) assertThat(finding.measure().value()).isEqualTo(expectedA2s);
    }

    /** 435.1: 16 A within 22.896 A (see the ampacity of the kitchen in the checks by hand) needs no calculation. */
    @Test
    void oneDeviceForOverloadAndShortCircuitIsDeemedToProtect() {
        Finding finding = finding("shortCircuit.conductor kitchen -");
        assertThat(finding.outcome()).isEqualTo(Outcome.MET);
        assertThat(finding.measure().value()).isEqualTo(16);
        assertThat(finding.measure().limit()).isCloseTo(22.896, within(0.0005));
    }

    /**
     * A protective conductor of 1.5 mm² beside lines of 2.5 mm² is below Table 54.2. Behind a gG fuse of 16 A, which lets
     * through 1210 A²s (IEC 60269-2) at 1524 A, the end counts: 0.3 Ω, 15 m of 2.5 and of 1.5 mm² at 80 °C
     * (12.1 · 1.23576 = 14.953 Ω/km) are 0.66165 Ω; 218.5 V drive 330.24 A, which the RCD of 30 mA ends within 0.04 s:
     * 4362.3 A²s, so √4362.3 / 115 = 0.57433 mm² (543.1.2). The way back over both electrodes, 12 Ω beside the PEN, lets
     * 0.3 % more flow.
     */
    @Test
    void faultItselfDecidesBelowTheTable() {
        Finding finding = finding(
                "conductor.protective kitchen -",
                "kitchen.protection: {kind: FUSE, ratedCurrentA: 16, breakingCapacityA: 50000}",
                "kitchen.cable.protectiveCrossSectionMm2: 1.5");
        assertThat(finding.outcome()).isEqualTo(Outcome.MET);
        assertThat(finding.measure().limit()).isCloseTo(0.57433, within(0.003));
    }

    /** 4 mm², method C, three loaded: 32 A, at 25 °C 33.92 A (IEC 60364-5-52): a source of 33 A cannot exceed it (436). */
    @ParameterizedTest(name = "{0} A: {1}")
    @CsvSource({"33, shortCircuit.island.cannotExceed", "34, shortCircuit.island.inTime"})
    void sourceThatCannotExceedTheConductorNeedsNoDevice(double faultCurrentA, String expected) {
        Finding finding =
                finding("shortCircuit.island inverter ISLAND_GRID_DEAD", "inverter.faultCurrentA: " + faultCurrentA);
        assertThat(finding.phrase().key()).isEqualTo(expected);
        assertThat(finding.outcome()).isEqualTo(Outcome.MET);
    }

    /** Connected its device is the back-up fuse; islanded that is on the dead side, and 20 A of the inverter's stay. */
    @Test
    void feederWithoutItsOwnDeviceIsLookedAtAgainInTheIsland() {
        Finding finding = finding(
                "shortCircuit.island annex-board ISLAND_GRID_DEAD",
                "annex-board.protection: null",
                "annex-board.cable.crossSectionMm2: 2.5",
                "inverter.faultCurrentA: 60");
        assertThat(finding.phrase().key()).isEqualTo("shortCircuit.island.device");
        assertThat(keysOf(Houses.with(HOUSE, List.of("annex-board.protection: null"))))
                .contains("shortCircuit.island annex-board ISLAND_GRID_DEAD");
        assertThat(keysOf(Houses.read(HOUSE))).doesNotContain("shortCircuit.island annex-board ISLAND_GRID_DEAD");
    }

    /** The old main switch fuse is judged only where the 24 A of the inverter are what is too much for it. */
    @ParameterizedTest(name = "{0} A: {1}")
    @CsvSource({"1530, false", "1510, true", "1490, false"})
    void existingDeviceIsJudgedWhereInvertersMakeItTooWeak(double breakingCapacityA, boolean judged) {
        Site site = Houses.with(
                HOUSE,
                List.of("meter-panel.protection: {kind: FUSE, ratedCurrentA: 63, breakingCapacityA: "
                        + breakingCapacityA + "}"));
        assertThat(keysOf(site).contains("shortCircuit.breakingCapacity meter-panel -"))
                .isEqualTo(judged);
    }

    /** A law: what breaks more is never worse. */
    @ParameterizedTest
    @ValueSource(strings = {"kitchen", "heater", "inverter", "annex-board"})
    void moreBreakingCapacityNeverMakesADeviceFail(String holder) {
        List<Boolean> met = new ArrayList<>();
        for (double capacityA : new double[] {500, 1000, 1200, 1500, 1524, 3000, 6000, 25000})
            met.add(finding(
                                    "shortCircuit.breakingCapacity " + holder + " -",
                                    holder + ".protection.breakingCapacityA: " + capacityA)
                            .outcome()
                    == Outcome.MET);
        assertThat(met).startsWith(false).endsWith(true).isSorted();
    }

    /** A law: a longer cable never lets more flow behind it. */
    @Test
    void longerCableNeverRaisesTheLargestCurrent() {
        List<Double> currentsA = new ArrayList<>();
        for (double lengthM : new double[] {200, 100, 50, 20, 10, 5, 1})
            currentsA.add(finding(
                            "shortCircuit.board annex-board -",
                            "annex-board.cable.lengthM: " + lengthM,
                            "annex-board.conditionalShortCircuitCurrentA: 100")
                    .measure()
                    .value());
        assertThat(currentsA).isSorted().doesNotHaveDuplicates();
    }

    private static Finding finding(String key, String... edits) {
        return Houses.assess(Houses.with(HOUSE, List.of(edits))).findings().stream()
                .filter(finding -> finding.key().toString().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no finding " + key));
    }

    private static List<String> keysOf(Site site) {
        return Houses.assess(site).findings().stream()
                .map(finding -> finding.key().toString())
                .toList();
    }
}
