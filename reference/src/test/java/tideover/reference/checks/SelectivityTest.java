package tideover.reference.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.installation.Installation;
import tideover.engine.protection.Tables;
import tideover.engine.protection.TripCurve;
import tideover.engine.protection.selectivity.CurvePair;
import tideover.engine.protection.selectivity.IslandShortCircuit;
import tideover.engine.protection.selectivity.SelectiveLimit;
import tideover.engine.protection.selectivity.SelectiveLimit.Beyond;
import tideover.engine.protection.selectivity.Selectivity;
import tideover.engine.site.Curve;
import tideover.engine.site.Inverter;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.ThingId;
import tideover.files.tables.TableFiles;
import tideover.reference.Houses;

/** Which of two devices in series opens first, as handbooks have it. Limits are test currents, so they are met exactly. */
class SelectivityTest {

    private static final Tables TABLES = TableFiles.load();
    private static final Selectivity SELECTIVITY = new Selectivity(TABLES);
    private static final double PROSPECTIVE_A = 3000;

    /** gG fuse-links of 16 A and more are selective from rated currents of 1.6 to 1 on (IEC 60269-2; any fuse handbook). */
    @ParameterizedTest(name = "{0} A behind {1} A")
    @CsvSource({"16, 25", "20, 32", "25, 40", "32, 50", "40, 63", "50, 80", "63, 100", "80, 125", "100, 160", "16, 63"})
    void fusesRatedSixteenToTenAreSelectiveAtAnyCurrent(double behindA, double beforeA) {
        assertThat(limit(fuse(behindA), fuse(beforeA)).currentA()).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @ParameterizedTest(name = "{0} A behind {1} A")
    @CsvSource({"16, 20", "25, 32", "25, 35", "50, 63", "63, 80", "80, 100", "63, 63", "63, 35"})
    void fusesRatedCloserAreNot(double behindA, double beforeA) {
        assertThat(limit(fuse(behindA), fuse(beforeA)).currentA()).isZero();
    }

    /** A breaker opens at once from 3 · 16 A (B), 5 · (C), 10 · (D) perhaps, from 5 ·, 10 ·, 20 · surely (IEC 60898-1, Table 7). */
    @ParameterizedTest(name = "{0} behind {1}: {2} A")
    @CsvSource({
        "B16, C25, 125, before it the C25 may open at once from 5 times 25 A on",
        "B16, C63, 315, 5 times 63 A",
        "C10, D20, 200, 10 times 20 A",
        "B10, C16, 80, 5 times 16 A",
        "B16, B63, 189, 3 times 63 A",
        "B16, B25, 0, the B25 may from 75 A and the B16 must from 80 A only",
        "B16, B16, 0, the same device twice",
        "C16, C25, 0, the C25 may from 125 A and the C16 must from 160 A only",
        "D16, C63, 0, the C63 may from 315 A and the D16 must from 320 A only"
    })
    void ofTwoBreakersBothOpenFromWhereTheOneBeforeMayOpenAtOnce(
            String behind, String before, double limitA, String because) {
        SelectiveLimit limit = limit(breaker(behind), breaker(before));
        assertThat(limit.currentA()).as(because).isEqualTo(limitA);
        assertThat(limit.beyond()).isEqualTo(Beyond.BOTH_OPEN);
    }

    /** A fuse has not melted within 0.1 s at the smaller current of that gate (IEC 60269-1, Table 3); 35 A counts as 32 A. */
    @ParameterizedTest(name = "{0} behind {1} A: {2} A")
    @CsvSource({
        "B16, 35, 200, gate of 32 A",
        "B16, 40, 260, gate",
        "B16, 63, 450, gate",
        "C16, 63, 450, gate",
        "B10, 16, 85, gate",
        "B16, 16, 85, the B16 surely opens from 80 A",
        "C16, 25, 0, the C16 surely opens from 160 A and the fuse may melt from 150 A"
    })
    void aBreakerBehindAFuseIsSelectiveUpToItsLastGate(String behind, double beforeA, double limitA, String because) {
        assertThat(limit(breaker(behind), fuse(beforeA)).currentA()).as(because).isEqualTo(limitA);
    }

    /**
     * EN 60898-1, Annex ZA: a B16 of class 3, tested at 3 kA, lets through 15 000 A²s at most. A 100 A fuse melts at 21 200 A²s
     * or more, one of 80 A at 13 700 A²s or more (IEC 60269-2, test of selectivity).
     */
    @ParameterizedTest(name = "behind {0} A: {1} A")
    @CsvSource({"100, 3000", "80, 610"})
    void theEnergyLimitingClassOfABreakerCountsAgainstTheFuseBeforeIt(double beforeA, double limitA) {
        OvercurrentDevice limiting = new OvercurrentDevice(OvercurrentKind.MCB, Curve.B, 16.0, 3000.0, 3, null, null);
        SelectiveLimit limit = limit(limiting, fuse(beforeA));
        assertThat(limit.currentA()).isEqualTo(limitA);
        assertThat(limit.beyond()).isEqualTo(Beyond.NOT_KNOWN);
    }

    @Test
    void nothingIsSaidOfADeviceThatIsNotKnown() {
        assertThat(SELECTIVITY.limit(
                        new OvercurrentDevice(null, null, 16.0, null, null, null, null), fuse(35), PROSPECTIVE_A))
                .isEmpty();
    }

    static List<List<OvercurrentDevice>> pairs() {
        return List.of(
                List.of(breaker("B16"), fuse(35)),
                List.of(breaker("C16"), fuse(63)),
                List.of(breaker("B10"), breaker("D63")),
                List.of(fuse(25), fuse(63)),
                List.of(fuse(16), breaker("D63")));
    }

    /** Every two per cent from 10 A to 10 kA. */
    @ParameterizedTest
    @MethodSource("pairs")
    void insideItsRangesAndNowhereElseTheDeviceBehindIsSurelyFirst(List<OvercurrentDevice> pair) {
        TripCurve behind = TABLES.tripCurves().find(pair.get(0)).orElseThrow();
        TripCurve before = TABLES.tripCurves().find(pair.get(1)).orElseThrow();
        List<CurvePair.Range> ranges = new CurvePair(behind, before).certain();
        assertThat(ranges).isNotEmpty();
        for (double currentA = 10; currentA < 10_000; currentA *= 1.02) {
            double at = currentA;
            boolean first = behind.latestS(at) <= before.earliestS(at) && Double.isFinite(behind.latestS(at));
            assertThat(ranges.stream().anyMatch(range -> range.fromA() <= at && at <= range.toA()))
                    .as("%s A", at)
                    .isEqualTo(first);
        }
    }

    /** The inverter gives 24 A for 0.15 s; the smallest breaker of the house, a B10, opens at once from 50 A only. */
    @Test
    void aShortCircuitInTheIslandOfTheTownHouseStopsTheInverter() {
        Installation installation = Installation.of(Houses.read(Houses.TOWN_HOUSE));
        IslandShortCircuit fault = island(installation);
        assertThat(fault.currentA()).isEqualTo(24);
        assertThat(fault.alone()).isEmpty();
        assertThat(fault.notAlone()).isEmpty();
        assertThat(fault.stopping())
                .containsExactlyInAnyOrderElementsOf(installation.circuits().stream()
                        .filter(installation::staysOn)
                        .map(circuit -> circuit.id())
                        .toList());
    }

    /** B10 and B16 open at once from 50 and 80 A; the inverter's own B20 may from 60 A on. */
    @ParameterizedTest(name = "{0} A")
    @ValueSource(doubles = {49, 51, 61})
    void aStrongerSourceLetsDevicesOpenButItsOwnMayOpenToo(double faultCurrentA) {
        IslandShortCircuit fault = island(
                Installation.of(Houses.with(Houses.TOWN_HOUSE, List.of("inverter.faultCurrentA: " + faultCurrentA))));
        ThingId lights = new ThingId("lights-upper");
        assertThat(fault.stopping().contains(lights)).isEqualTo(faultCurrentA < 50);
        assertThat(fault.alone().contains(lights)).isEqualTo(faultCurrentA > 50 && faultCurrentA <= 60);
        assertThat(fault.notAlone().contains(lights)).isEqualTo(faultCurrentA > 60);
    }

    private static IslandShortCircuit island(Installation installation) {
        Inverter inverter = installation.formingInverters().get(0);
        return IslandShortCircuit.of(installation, TABLES, inverter);
    }

    private static SelectiveLimit limit(OvercurrentDevice behind, OvercurrentDevice before) {
        return SELECTIVITY.limit(behind, before, PROSPECTIVE_A).orElseThrow();
    }

    private static OvercurrentDevice fuse(double ratedA) {
        return new OvercurrentDevice(OvercurrentKind.FUSE, null, ratedA, null, null, null, null);
    }

    private static OvercurrentDevice breaker(String device) {
        return new OvercurrentDevice(
                OvercurrentKind.MCB,
                Curve.valueOf(device.substring(0, 1)),
                Double.valueOf(device.substring(1)),
                null,
                null,
                null,
                null);
    }
}
