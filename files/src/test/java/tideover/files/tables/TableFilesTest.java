package tideover.files.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.network.AmpacityTable;
import tideover.engine.network.HarmonicTable;
import tideover.engine.network.InstalledAmpacity;
import tideover.engine.network.LoadedConductors;
import tideover.engine.network.StartTable;
import tideover.engine.protection.Tables;
import tideover.engine.protection.TripCurve;
import tideover.engine.site.Curve;
import tideover.engine.site.InstallationMethod;
import tideover.engine.site.Insulation;
import tideover.engine.site.Material;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.StartKind;

/** What must hold for tables of whatever figures; the figures themselves are compared in module reference. */
class TableFilesTest {

    private static final Tables TABLES = TableFiles.load();
    private static final List<String> NAMES = TableFiles.NAMES;
    private static final double[] FUSES_A = {
        2, 4, 6, 10, 13, 16, 20, 25, 32, 35, 40, 50, 63, 80, 100, 125, 160, 200, 250
    };

    @ParameterizedTest
    @FieldSource("NAMES")
    void everyRowOfEveryTableNamesItsSource(String file) {
        Table table = Table.read(file);
        assertThat(table.rows()).isNotEmpty().allSatisfy(row -> {
            assertThat(row.source().document()).isNotBlank();
            assertThat(row.source().clause()).isNotBlank();
        });
    }

    @Test
    void rowsHoldAtTheTemperaturesTheTypesTakeThemFor() {
        assertThat(Table.read("conductor-resistance.csv").map(row -> row.number("temperatureDegC")))
                .containsOnly(20.0);
        assertThat(Table.read("ampacity.csv").rows()).allSatisfy(row -> {
            boolean buried = row.text("method").startsWith("D");
            assertThat(row.number("ambientDegC")).isEqualTo(buried ? 20 : 30);
        });
    }

    @ParameterizedTest
    @EnumSource(Material.class)
    void aThickerConductorHasLessResistanceAlsoBetweenAndBeyondStandardSections(Material material) {
        double previousOhmPerKm = Double.POSITIVE_INFINITY;
        for (double mm2 = 0.3; mm2 < 300; mm2 *= 1.03) {
            double ohmPerKm = TABLES.conductors().resistanceOhmPerKm(material, mm2, 70);
            assertThat(ohmPerKm).as("%s mm²", mm2).isLessThan(previousOhmPerKm);
            previousOhmPerKm = ohmPerKm;
        }
    }

    @ParameterizedTest
    @EnumSource(InstallationMethod.class)
    void aThickerConductorCarriesMoreAndThreeLoadedConductorsLessThanTwo(InstallationMethod method) {
        AmpacityTable table = TABLES.ampacity();
        for (Material material : Material.values())
            for (Insulation insulation : Insulation.values()) {
                double previousA = 0;
                for (double mm2 : table.crossSectionsMm2(material, insulation, method, LoadedConductors.TWO)) {
                    double twoA = ampacityA(material, insulation, method, LoadedConductors.TWO, mm2);
                    assertThat(twoA).isGreaterThan(previousA);
                    assertThat(ampacityA(material, insulation, method, LoadedConductors.THREE, mm2))
                            .as("%s %s %s %s mm²", material, insulation, method, mm2)
                            .isLessThan(twoA);
                    previousA = twoA;
                }
                assertThat(previousA)
                        .as("%s %s %s", material, insulation, method)
                        .isPositive();
            }
    }

    @Test
    void crossLinkedInsulationCarriesMoreThanPvc() {
        for (InstallationMethod method : InstallationMethod.values())
            assertThat(ampacityA(Material.COPPER, Insulation.XLPE, method, LoadedConductors.TWO, 2.5))
                    .isGreaterThan(ampacityA(Material.COPPER, Insulation.PVC, method, LoadedConductors.TWO, 2.5));
    }

    @ParameterizedTest
    @EnumSource(InstallationMethod.class)
    void warmerSurroundingsAndMoreNeighboursNeverHelp(InstallationMethod method) {
        for (Insulation insulation : Insulation.values()) {
            double previousRatio = Double.POSITIVE_INFINITY;
            for (double degC = -5; degC <= 60; degC += 0.5) {
                double ratio = TABLES.ampacity()
                        .findTemperatureRatio(method, insulation, degC)
                        .orElseThrow();
                assertThat(ratio).isLessThanOrEqualTo(previousRatio);
                previousRatio = ratio;
            }
        }
        double previousRatio = Double.POSITIVE_INFINITY;
        for (int circuits = 1; circuits <= 6; circuits++) {
            double ratio = TABLES.ampacity().findGroupingRatio(method, circuits).orElseThrow();
            assertThat(ratio).as("%d circuits", circuits).isLessThan(previousRatio);
            previousRatio = ratio;
        }
    }

    @Test
    void aNumberOfCircuitsBetweenTwoRowsTakesTheNextLargerOne() {
        AmpacityTable table = TABLES.ampacity();
        assertThat(table.findGroupingRatio(InstallationMethod.B2, 10))
                .isEqualTo(table.findGroupingRatio(InstallationMethod.B2, 12))
                .isNotEqualTo(table.findGroupingRatio(InstallationMethod.B2, 9));
    }

    @Test
    void whatTheTablesDoNotReachIsNotGuessed() {
        AmpacityTable table = TABLES.ampacity();
        assertThat(table.findGroupingRatio(InstallationMethod.C, 21)).isEmpty();
        assertThat(table.findTemperatureRatio(InstallationMethod.C, Insulation.PVC, 61))
                .isEmpty();
        assertThat(table.find(Material.COPPER, Insulation.PVC, InstallationMethod.C, LoadedConductors.TWO, 3))
                .isEmpty();
        assertThat(table.find(Material.ALUMINIUM, Insulation.PVC, InstallationMethod.C, LoadedConductors.TWO, 10))
                .isEmpty();
        assertThat(TABLES.tripCurves().findFuse(315)).isEmpty();
        assertThat(TABLES.tripCurves().findBreaker(OvercurrentKind.MCB, Curve.B, 160))
                .isEmpty();
    }

    @Test
    void installedAmpacityIsTheTabulatedOneTimesItsFactors() {
        Optional<InstalledAmpacity> installed = TABLES.ampacity()
                .findInstalled(
                        Material.COPPER, Insulation.PVC, InstallationMethod.B2, LoadedConductors.TWO, 2.5, 3, 35);
        assertThat(installed)
                .hasValueSatisfying(found -> assertThat(found.currentA())
                        .isEqualTo(found.tabulated().currentA() * found.temperatureRatio() * found.groupingRatio())
                        .isLessThan(found.tabulated().currentA() * found.groupingRatio()));
    }

    @ParameterizedTest
    @EnumSource(Curve.class)
    void aBreakerOpensNoLaterAtMoreCurrentAndNeverLaterThanEarliest(Curve curve) {
        for (double ratedA : new double[] {6, 16, 32, 40, 63, 80})
            for (OvercurrentKind kind : List.of(OvercurrentKind.MCB, OvercurrentKind.CIRCUIT_BREAKER))
                assertSound(TABLES.tripCurves().findBreaker(kind, curve, ratedA).orElseThrow());
    }

    @ParameterizedTest
    @FieldSource("FUSES_A")
    void aFuseMeltsNoLaterAtMoreCurrentAndNeverLaterThanEarliest(double ratedA) {
        assertSound(TABLES.tripCurves().findFuse(ratedA).orElseThrow());
    }

    @ParameterizedTest
    @FieldSource("FUSES_A")
    void aLargerFuseNeedsMoreCurrentToMeltInTime(double ratedA) {
        TripCurve fuse = TABLES.tripCurves().findFuse(ratedA).orElseThrow();
        for (double other : FUSES_A)
            if (other > ratedA) {
                TripCurve larger = TABLES.tripCurves().findFuse(other).orElseThrow();
                for (double timeS : new double[] {0.1, 0.2, 0.4, 1, 5})
                    assertThat(larger.currentForDisconnectionA(timeS))
                            .as("%s A against %s A in %s s", other, ratedA, timeS)
                            .isGreaterThanOrEqualTo(fuse.currentForDisconnectionA(timeS));
            }
    }

    @Test
    void aFuseRatingTheTablesDoNotKnowIsJudgedByItsSlowerAndFasterNeighbours() {
        TripCurve between = TABLES.tripCurves().findFuse(35).orElseThrow();
        TripCurve faster = TABLES.tripCurves().findFuse(32).orElseThrow();
        TripCurve slower = TABLES.tripCurves().findFuse(40).orElseThrow();
        assertThat(between.currentForDisconnectionA(0.4)).isEqualTo(slower.currentForDisconnectionA(0.4));
        assertThat(between.earliestS(150)).isEqualTo(faster.earliestS(150));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.0})
    void noOvercurrentDeviceIsReliedOnBelowATenthOfASecond(double timeS) {
        assertThat(TABLES.tripCurves().findFuse(16).orElseThrow().currentForDisconnectionA(timeS))
                .isInfinite();
        assertThat(TABLES.tripCurves()
                        .findBreaker(OvercurrentKind.MCB, Curve.B, 16)
                        .orElseThrow()
                        .currentForDisconnectionA(timeS))
                .isInfinite();
    }

    @Test
    void aFuseHasNoBreakerCurve() {
        assertThatThrownBy(() -> TABLES.tripCurves().findBreaker(OvercurrentKind.FUSE, Curve.B, 16))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest(name = "{0}{1} of {2} A, class {3}: {4} A²s")
    @CsvSource({
        // EN 60898-1, Annex ZA, as quoted in public texts
        "B, 16, 10000, 2, 240000",
        "C, 10, 10000, 2, 290000",
        "B, 16, 10000, 3, 70000",
        "C, 16, 10000, 3, 84000"
    })
    void aBreakerLetsThroughWhatItsClassAllows(
            Curve curve, double ratedA, double capacityA, int energyLimitingClass, double expectedA2s) {
        OvercurrentDevice breaker =
                new OvercurrentDevice(OvercurrentKind.MCB, curve, ratedA, capacityA, energyLimitingClass, null, null);
        assertThat(TABLES.letThrough().find(breaker, capacityA)).contains(expectedA2s);
        assertThat(TABLES.letThrough().find(breaker, capacityA + 1))
                .as("above what it breaks")
                .isEmpty();
        assertThat(TABLES.letThrough().find(breaker, 3 * ratedA))
                .as("too small a current to open at once")
                .isEmpty();
    }

    @Test
    void aBreakerWithoutClassPromisesNothing() {
        assertThat(TABLES.letThrough()
                        .find(
                                new OvercurrentDevice(OvercurrentKind.MCB, Curve.B, 16.0, 6000.0, null, null, null),
                                3000))
                .isEmpty();
    }

    @Test
    void aLargerFuseLetsThroughNoLessAndHoldsNoLess() {
        double previousA2s = 0;
        double previousHoldingA2s = 0;
        for (double ratedA : new double[] {16, 20, 25, 32, 35, 40, 50, 63, 80, 100}) {
            OvercurrentDevice fuse =
                    new OvercurrentDevice(OvercurrentKind.FUSE, null, ratedA, 50000.0, null, null, null);
            double letThroughA2s = TABLES.letThrough().find(fuse, 10000).orElseThrow();
            double holdingA2s = TABLES.letThrough().findHoldingA2s(fuse).orElseThrow();
            assertThat(holdingA2s).as("%s A", ratedA).isLessThan(letThroughA2s);
            assertThat(letThroughA2s).as("%s A", ratedA).isGreaterThanOrEqualTo(previousA2s);
            assertThat(holdingA2s).as("%s A", ratedA).isGreaterThanOrEqualTo(previousHoldingA2s);
            previousA2s = letThroughA2s;
            previousHoldingA2s = holdingA2s;
        }
    }

    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvSource({
        // IEC 60364-5-52:2009, Table E.52.1: 0 to 15 %, 15 to 33 %, 33 to 45 %, above
        "0, LINE, 1",
        "0.15, LINE, 1",
        "0.2, LINE, 0.86",
        "0.33, LINE, 0.86",
        "0.4, NEUTRAL, 0.86",
        "0.5, NEUTRAL, 1"
    })
    void thirdHarmonicsTakeFromTheAmpacity(
            double thirdHarmonicRatio, HarmonicTable.SizedOn sizedOn, double expectedRatio) {
        HarmonicTable.Row row = TABLES.harmonics().require(thirdHarmonicRatio);
        assertThat(row.sizedOn()).isEqualTo(sizedOn);
        assertThat(row.factorRatio()).isEqualTo(expectedRatio);
    }

    @Test
    void aDirectStartDrawsMostAndAFrequencyConverterLeast() {
        assertThat(Stream.of(StartKind.DIRECT, StartKind.SOFT, StartKind.INVERTER, StartKind.NONE)
                        .map(start -> TABLES.starts().require(start).largestRatio()))
                .isSortedAccordingTo(Comparator.<Double>reverseOrder());
        for (StartKind start : StartKind.values()) {
            StartTable.Row row = TABLES.starts().require(start);
            assertThat(row.smallestRatio()).isBetween(1.0, row.largestRatio());
            assertThat(row.shortestS()).isBetween(0.0, row.longestS());
            assertThat(row.smallestPowerFactorRatio()).isBetween(0.0, row.largestPowerFactorRatio());
        }
    }

    private static void assertSound(TripCurve curve) {
        assertThat(curve.earliestS(curve.ratedCurrentA())).isInfinite();
        assertThat(curve.latestS(curve.ratedCurrentA())).isInfinite();
        double previousLatestS = Double.POSITIVE_INFINITY;
        double previousEarliestS = Double.POSITIVE_INFINITY;
        for (double multiple = 1; multiple < 40; multiple *= 1.01) {
            double currentA = multiple * curve.ratedCurrentA();
            double latestS = curve.latestS(currentA);
            double earliestS = curve.earliestS(currentA);
            assertThat(earliestS).as("%s at %s A", curve, currentA).isLessThanOrEqualTo(latestS);
            assertThat(latestS).isLessThanOrEqualTo(previousLatestS);
            assertThat(earliestS).isLessThanOrEqualTo(previousEarliestS);
            previousLatestS = latestS;
            previousEarliestS = earliestS;
        }
        for (double timeS : new double[] {0.1, 0.2, 0.4, 1, 5, 60, 600})
            // The current asked for a time opens the device in it; a hair above, for the logarithms.
            assertThat(curve.latestS(curve.currentForDisconnectionA(timeS) * 1.000001))
                    .isLessThanOrEqualTo(timeS);
    }

    private static double ampacityA(
            Material material, Insulation insulation, InstallationMethod method, LoadedConductors loaded, double mm2) {
        return TABLES.ampacity()
                .find(material, insulation, method, loaded, mm2)
                .orElseThrow()
                .currentA();
    }
}
