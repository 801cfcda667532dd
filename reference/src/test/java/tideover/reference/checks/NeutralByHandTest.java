package tideover.reference.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Outcome;
import tideover.engine.site.ThingId;
import tideover.reference.Houses;

/** Neutrals calculated by hand, with the figures written out. */
class NeutralByHandTest {

    private static final Path HOUSE = Path.of("src/test/resources/tideover/reference/checks/house.yaml");

    /**
     * 39 A in a PVC cable of four loaded cores on a wall. Without harmonics 6 mm² bears 41 A. With 20 % it must bear
     * 39 / 0.86 = 45 A: 10 mm². With 40 % the neutral carries 39 · 0.4 · 3 = 46.8 A, 46.8 / 0.86 = 54.4 A: 10 mm². With
     * 50 % it carries 58.5 A: 16 mm² (IEC 60364-5-52:2009, Annex E, the example; from memory).
     */
    @ParameterizedTest(name = "{0} of third harmonic: {1} mm²")
    @CsvSource({"0, 6", "0.2, 10", "0.4, 10", "0.5, 16"})
    void thirdHarmonicsAskForALargerCable(double thirdHarmonicRatio, double expectedMm2) {
        double found = List.of(4.0, 6.0, 10.0, 16.0).stream()
                .filter(mm2 -> design(thirdHarmonicRatio, mm2) == Outcome.MET)
                .findFirst()
                .orElseThrow();
        assertThat(found).isEqualTo(expectedMm2);
    }

    private static Outcome design(double thirdHarmonicRatio, double crossSectionMm2) {
        return finding(
                        "overload.design",
                        "heat-pump",
                        List.of(
                                "heat-pump.cable.method: C",
                                "heat-pump.cable.ambientDegC: 30",
                                "heat-pump.cable.crossSectionMm2: " + crossSectionMm2,
                                "heat-pump.protection.ratedCurrentA: 40",
                                "heat-pump.load.demandCurrentA: 39",
                                "heat-pump.load.thirdHarmonicRatio: " + thirdHarmonicRatio))
                .outcome();
    }

    /** Three lines of 39 A with 40 %: 3 · 0.4 · 39 A = 46.8 A; the fundamental leaves nothing. */
    @Test
    void thirdHarmonicsOfThreeLinesAddInTheNeutral() {
        assertThat(neutralA(
                        "heat-pump",
                        List.of("heat-pump.load.demandCurrentA: 39", "heat-pump.load.thirdHarmonicRatio: 0.4")))
                .isCloseTo(46.8, within(0.05));
    }

    /** 2,000 W on L1 and 2,800 W on L2 at 230 V: the larger, 12.174 A, when the other is off. On one line 20.870 A. */
    @Test
    void circuitsOnOneNeutralAddOnOneLineOnly() {
        assertThat(neutralA("kitchen", List.of())).isCloseTo(12.174, within(0.0005));
        assertThat(neutralA("kitchen", List.of("oven.conductors: [L1, N, PE]"))).isCloseTo(20.870, within(0.0005));
    }

    /**
     * The same on two lines with 30 % in both: 12.174 · √(1 − 0.3²) = 11.613 A of the fundamental, 0.3 · (8.6957 + 12.174)
     * = 6.2609 A of third harmonics, together √(11.613² + 6.2609²) = 13.193 A.
     */
    @Test
    void thirdHarmonicsOfDifferentLinesAddToTheUnbalance() {
        assertThat(neutralA(
                        "kitchen",
                        List.of("kitchen.load.thirdHarmonicRatio: 0.3", "oven.load.thirdHarmonicRatio: 0.3")))
                .isCloseTo(13.193, within(0.0005));
    }

    private static double neutralA(String circuit, List<String> edits) {
        Finding.Measure measure = finding("overload.neutral", circuit, edits).measure();
        assertThat(measure).isNotNull();
        return measure.value();
    }

    private static Finding finding(String check, String circuit, List<String> edits) {
        return Houses.assess(Houses.with(HOUSE, edits)).findings().stream()
                .filter(finding -> finding.key().check().equals(check))
                .filter(finding -> finding.key().place().equals(new ThingId(circuit)))
                .findFirst()
                .orElseThrow();
    }
}
