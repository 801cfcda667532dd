package tideover.reference.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.assessment.Assessor;
import tideover.engine.assessment.Studies;
import tideover.engine.installation.Installation;
import tideover.engine.network.flow.Flow;
import tideover.engine.network.flow.FourWireNetwork;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.HouseFlowResult;
import tideover.engine.network.house.HouseNetwork;
import tideover.engine.network.house.Regime;
import tideover.engine.network.house.Unsolved;
import tideover.engine.protection.Clearing;
import tideover.engine.protection.DeviceBand;
import tideover.engine.protection.Extreme;
import tideover.engine.protection.FaultAssumptions;
import tideover.engine.protection.FaultCourse;
import tideover.engine.protection.FaultKind;
import tideover.engine.protection.FaultStory;
import tideover.engine.protection.FaultStudy;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Finding;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.Circuit;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Site;
import tideover.engine.site.ThingId;
import tideover.files.tables.TableFiles;
import tideover.reference.GeneratedSites;
import tideover.reference.Houses;

/**
 * Kirchhoff's laws and the balance of power in every example house and in houses drawn by seed, in every state; and houses
 * nobody would build, which get an answer or a message, never a number that is none.
 */
class HouseFlowLawsTest {

    private static final Path HOUSE = Path.of("src/test/resources/tideover/reference/checks/house.yaml");

    /** Insulation of a part that nothing earths, 100 MΩ at 400 V [A], and the solver's own tolerance. */
    private static final double SUM_A = 5e-6;

    static Stream<Site> houses() {
        return Stream.concat(
                Houses.all().stream().map(Houses::read),
                LongStream.rangeClosed(1, 30).mapToObj(GeneratedSites::site));
    }

    private static Studies studies(Site site) {
        return new Assessor(TableFiles.load()).studies(site, Houses.rules(site));
    }

    private static void inEveryState(Site site, Consumer<HouseFlow> law) {
        Studies studies = studies(site);
        if (studies.flow() == null) return;
        for (OperatingState state : studies.installation().states())
            for (Regime regime : Regime.values())
                if (studies.flow().flow(state, regime) instanceof HouseFlow flow) law.accept(flow);
    }

    @ParameterizedTest
    @MethodSource("houses")
    void whatFlowsToATerminalFlowsAwayFromIt(Site site) {
        inEveryState(site, house -> {
            FourWireNetwork network = house.house().network();
            Phasor[] sumA = new Phasor[network.pointCount()];
            Arrays.fill(sumA, Phasor.ZERO);
            for (int branch = 0; branch < network.branchCount(); branch++)
                add(sumA, network.from(branch), network.to(branch), house.flow().currentA(branch));
            for (int load = 0; load < network.loadCount(); load++)
                add(
                        sumA,
                        network.load(load).from(),
                        network.load(load).to(),
                        house.flow().loadCurrentA(load));
            for (int point = 1; point < sumA.length; point++)
                assertThat(sumA[point].magnitude())
                        .as("%s, point %d", house.state(), point)
                        .isLessThan(SUM_A);
        });
    }

    private static void add(Phasor[] sumA, int from, int to, Phasor currentA) {
        sumA[from] = sumA[from].plus(currentA);
        sumA[to] = sumA[to].minus(currentA);
    }

    @ParameterizedTest
    @MethodSource("houses")
    void sourcesGiveWhatLoadsTakeAndConductorsLose(Site site) {
        inEveryState(site, house -> {
            Flow flow = house.flow();
            FourWireNetwork network = house.house().network();
            double givenW = 0;
            double lostW = 0;
            for (int branch = 0; branch < network.branchCount(); branch++) {
                givenW += flow.sourcePower(branch).real();
                lostW += flow.lossW(branch);
            }
            double takenW = 0;
            for (int load = 0; load < network.loadCount(); load++)
                takenW += flow.loadPower(load).real();
            assertThat(givenW).as("%s", house.state()).isCloseTo(takenW + lostW, within(1e-2));
            assertThat(lostW).isGreaterThanOrEqualTo(-1e-2);
        });
    }

    @ParameterizedTest
    @MethodSource("houses")
    void simpleMethodOfOnePathNeverGivesMoreThanTheWholeNetwork(Site site) {
        Studies studies = studies(site);
        if (studies.faults() == null) return;
        FaultStudy simple = simpleFaults(studies.installation(), Houses.rules(site));
        Installation installation = studies.installation();
        for (OperatingState state : installation.states())
            for (Fed fed : installation.all(Fed.class)) {
                List<FaultStory> paths = simple.lineToEarth(fed, state);
                List<FaultStory> whole = studies.faults().lineToEarth(fed, state);
                assertThat(whole).hasSameSizeAs(paths);
                for (int i = 0; i < paths.size(); i++) {
                    // Over the network's earth the island's current also passes the network's neutral, which the path
                    // leaves out.
                    boolean overNetwork = !paths.get(i).source().equals(ThingId.SUPPLY)
                            && paths.get(i).facts().contains(FactId.of("supply.networkElectrodeOhm"));
                    if (!overNetwork)
                        assertThat(whole.get(i).currentA())
                                .as("%s in %s", fed.id(), state)
                                .isGreaterThanOrEqualTo(paths.get(i).currentA() * (1 - 1e-6));
                }
            }
    }

    private static FaultStudy simpleFaults(Installation installation, RuleBook rules) {
        FaultAssumptions assumptions = new FaultAssumptions(
                rules.find("fault.voltageFactor").orElseThrow().requireNumber(),
                rules.find("fault.loopTemperatureDegC").orElseThrow().requireNumber(),
                rules.find("fault.safeVoltageV").orElseThrow().requireNumber(),
                rules.find("fault.measuredLoopFactor").orElseThrow().requireNumber(),
                FaultAssumptions.LARGEST_VOLTAGE_FACTOR_RATIO,
                FaultAssumptions.COLD_DEG_C);
        return ProtectionStudies.pathFaults(installation, TableFiles.load(), assumptions);
    }

    @ParameterizedTest
    @MethodSource("houses")
    void largestFaultCurrentIsNotBelowTheSmallest(Site site) {
        Studies studies = studies(site);
        if (studies.faults() == null) return;
        for (Circuit circuit : studies.installation().circuits())
            for (FaultKind kind : FaultKind.values()) {
                List<FaultCourse> largest = new ArrayList<>();
                List<FaultCourse> smallest = new ArrayList<>();
                for (OperatingState state : studies.installation().states()) {
                    largest.addAll(studies.faults().courses(kind, circuit, state, Extreme.LARGEST, 0));
                    smallest.addAll(studies.faults().courses(kind, circuit, state, Extreme.SMALLEST, 0));
                }
                assertThat(largest).hasSameSizeAs(smallest);
                for (int i = 0; i < largest.size(); i++) {
                    assertThat(largest.get(i).currentA())
                            .as("%s at %s", kind, circuit.id())
                            .isFinite()
                            .isGreaterThanOrEqualTo(smallest.get(i).currentA() * (1 - 1e-8));
                    assertThat(smallest.get(i).touchVoltageV()).isFinite().isNotNegative();
                }
            }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "rcd-house.conductors: [L1, L2, L3, PE]",
                "kitchen.cable.lengthM: 2000",
                "annex-board.cable.lengthM: 2000",
                "kitchen.cable.lengthM: 0.1",
                "inverter.lineCurrentA: 0.5 & inverter.faultCurrentA: 0.5 & inverter.ratedPowerVa: 100",
                "without neutral-earth-switch & without electrode",
                "neutral-earth-switch.restPosition: CLOSED & annex-board.neutralFrom: grid-board",
                "kitchen.load: null & oven.load: null & lights.load: null & workshop.load: null & heat-pump.load: null & heater.load: null",
                "kitchen.load.powerW: 100000",
                "supply.loopImpedanceOhm: 90",
                "supply.networkElectrodeOhm: null & supply.loopImpedanceOhm: null & supply.prospectiveCurrentA: null",
                "kitchen.cable.crossSectionMm2: null & annex-board.cable.lengthM: null",
                "inverter.islandVoltageV: null & inverter.faultCurrentA: null & inverter.lineCurrentA: null"
            })
    void hostileHouseGetsAnAnswerOrAMessageAndNeverANumberThatIsNone(String edits) {
        Site site = Houses.with(HOUSE, List.of(edits.split(" & ")));
        for (Finding finding : Houses.assess(site).findings())
            if (finding.measure() != null)
                assertThat(finding.measure().value()).as("%s", finding.key()).isNotNaN();
        Studies studies = studies(site);
        for (OperatingState state : studies.installation().states())
            for (Regime regime : Regime.values()) {
                HouseFlowResult result = Objects.requireNonNull(studies.flow()).flow(state, regime);
                if (result instanceof Unsolved unsolved)
                    assertThat(unsolved.iterations()).isPositive();
                else assertFinite((HouseFlow) result);
                for (Circuit circuit : studies.installation().circuits())
                    for (FaultKind kind : FaultKind.values())
                        for (FaultCourse course : Objects.requireNonNull(studies.faults())
                                .courses(kind, circuit, state, Extreme.SMALLEST, 0)) {
                            assertThat(course.currentA()).isFinite().isNotNegative();
                            assertThat(course.linkA()).isFinite();
                            assertThat(course.voltageLeftV()).isFinite();
                        }
            }
    }

    /** Lengths no site file may state; another program, or an edit, might. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-9, 10_000, 1e7})
    void cableOfAnyLengthGetsAnAnswer(double lengthM) {
        for (String thing : List.of("kitchen", "annex-board", "inverter"))
            for (Regime regime : Regime.values()) {
                Site site = Houses.read(HOUSE).with(FactId.of(thing + ".cable.lengthM"), lengthM);
                Studies studies = studies(site);
                for (OperatingState state : studies.installation().states())
                    if (Objects.requireNonNull(studies.flow()).flow(state, regime) instanceof HouseFlow flow)
                        assertFinite(flow);
                for (Finding finding : Houses.assess(site).findings())
                    if (finding.measure() != null)
                        assertThat(finding.measure().value())
                                .as("%s", finding.key())
                                .isNotNaN();
            }
    }

    private static void assertFinite(HouseFlow flow) {
        HouseNetwork house = flow.house();
        for (int point = 0; point < house.network().pointCount(); point++)
            assertThat(flow.flow().voltageV(point).magnitude()).isFinite();
        for (int branch = 0; branch < house.network().branchCount(); branch++)
            assertThat(flow.flow().currentA(branch).magnitude()).isFinite();
    }

    @ParameterizedTest
    @ValueSource(strings = {"kitchen", "oven", "lights", "heater"})
    void interruptedNeutralOfASingleCircuitLeavesItWithoutVoltage(String circuit) {
        Studies studies = studies(Houses.read(HOUSE));
        Fed fed = studies.installation().findFed(new ThingId(circuit)).orElseThrow();
        HouseFlowResult result = Objects.requireNonNull(studies.flow()).withoutNeutral(fed, OperatingState.CONNECTED);
        assertThat(result).isInstanceOf(HouseFlow.class);
        HouseFlow flow = (HouseFlow) result;
        double currentA = flow.lineCurrentsA(fed).largest();
        // Three equal heaters need no neutral; one load alone has no way back.
        if (circuit.equals("heater")) assertThat(currentA).isBetween(15.0, 18.0);
        else assertThat(currentA).isLessThan(1e-5);
    }

    /** The inverter stands in the annex: what opens before the annex leaves the annex itself with voltage. */
    @Test
    void whatOpensOnTheWayFromTheSourceDarkensWhatLiesBeyondItAndNothingElse() {
        Studies studies = studies(Houses.with(
                HOUSE,
                List.of(
                        "inverter.fedFrom: annex-board",
                        "inverter.faultCurrentA: 200",
                        "inverter.shutOffTimeS: 5",
                        "inverter.protection: null")));
        Fed board = studies.installation().findFed(new ThingId("main-board")).orElseThrow();
        FaultCourse course = Objects.requireNonNull(studies.faults())
                .courses(FaultKind.LINE_TO_EARTH, board, OperatingState.ISLAND_GRID_DEAD, Extreme.SMALLEST, 0)
                .get(0);
        assertThat(course.bands()).extracting(DeviceBand::device).contains(new ThingId("annex-board"));
        assertThat(((Clearing.ByDevice) course.clearing()).device()).isEqualTo(new ThingId("annex-board"));
        assertThat(course.dark()).contains(new ThingId("kitchen")).doesNotContain(new ThingId("workshop"));
    }

    /** Its own device opens: all that it feeds is dark, also what does not lie behind it from the grid. */
    @Test
    void inverterWhoseOwnDeviceOpensLeavesTheWholeIslandDark() {
        Studies studies =
                studies(Houses.with(HOUSE, List.of("inverter.faultCurrentA: 200", "inverter.shutOffTimeS: 5")));
        Fed board = studies.installation().findFed(new ThingId("main-board")).orElseThrow();
        FaultCourse course = Objects.requireNonNull(studies.faults())
                .courses(FaultKind.LINE_TO_EARTH, board, OperatingState.ISLAND_GRID_DEAD, Extreme.SMALLEST, 0)
                .get(0);
        assertThat(((Clearing.ByDevice) course.clearing()).device()).isEqualTo(new ThingId("inverter"));
        assertThat(course.dark()).contains(new ThingId("kitchen"), new ThingId("lights"), new ThingId("workshop"));
    }
}
