package tideover.engine.network.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Small networks whose answers a person can work out by hand: Ohm's and Kirchhoff's laws. */
class FourWireNetworkTest {

    private static Flow solve(FourWireNetwork network) {
        FlowResult result = network.solve();
        assertThat(result).as("solved").isInstanceOf(Flow.class);
        return (Flow) result;
    }

    @Test
    void heaterBehindACableDrawsWhatTheDividerGives() {
        FourWireNetwork.Builder builder = FourWireNetwork.builder();
        int line = builder.point();
        int end = builder.point();
        builder.source(FourWireNetwork.EARTH, line, Phasor.of(230), Phasor.ZERO);
        int cable = builder.branch(line, end, Phasor.of(1));
        builder.load(PowerLoad.impedance(end, FourWireNetwork.EARTH, 2300, 0, 230));
        Flow flow = solve(builder.build());
        // 230 V over 1 Ω and 23 Ω.
        assertThat(flow.currentA(cable).magnitude()).isCloseTo(230.0 / 24, within(1e-9));
        assertThat(flow.voltageV(end).magnitude()).isCloseTo(230.0 * 23 / 24, within(1e-9));
        assertThat(flow.currentA(0).magnitude()).isCloseTo(230.0 / 24, within(1e-9));
    }

    @Test
    void constantPowerLoadTakesTheUpperRootOfItsEquation() {
        FourWireNetwork.Builder builder = FourWireNetwork.builder();
        int line = builder.point();
        int end = builder.point();
        builder.source(FourWireNetwork.EARTH, line, Phasor.of(230), Phasor.of(0));
        builder.branch(line, end, Phasor.of(2));
        builder.load(PowerLoad.constantPower(end, FourWireNetwork.EARTH, 3000, 0, 230));
        Flow flow = solve(builder.build());
        // U² - 230 U + 2·3000 = 0
        assertThat(flow.voltageV(end).magnitude())
                .isCloseTo((230 + Math.sqrt(230 * 230 - 4 * 6000.0)) / 2, within(1e-7));
    }

    @Test
    void interruptedNeutralPutsTwoLoadsInSeriesBetweenLines() {
        FourWireNetwork.Builder builder = FourWireNetwork.builder();
        int l1 = builder.point();
        int l2 = builder.point();
        int neutral = builder.point();
        builder.source(FourWireNetwork.EARTH, l1, Phasor.polar(230, 0), Phasor.ZERO);
        builder.source(FourWireNetwork.EARTH, l2, Phasor.polar(230, -120), Phasor.ZERO);
        builder.load(PowerLoad.impedance(l1, neutral, 2300, 0, 230));
        builder.load(PowerLoad.impedance(l2, neutral, 230, 0, 230));
        Flow flow = solve(builder.build());
        // 400 V (398.37) divided as 23 Ω and 230 Ω.
        double lineToLineV = Math.sqrt(3) * 230;
        assertThat(flow.voltageV(l2, neutral).magnitude()).isCloseTo(lineToLineV * 230 / 253, within(1e-4));
        assertThat(flow.voltageV(l1, neutral).magnitude()).isCloseTo(lineToLineV * 23 / 253, within(1e-4));
    }

    @Test
    void otherLoadsWhereTheNetworkHasRoomDivideTheVoltageAsIfBuiltIn() {
        FourWireNetwork.Builder builder = FourWireNetwork.builder();
        int l1 = builder.point();
        int l2 = builder.point();
        int neutral = builder.point();
        builder.source(FourWireNetwork.EARTH, l1, Phasor.polar(230, 0), Phasor.of(1));
        builder.source(FourWireNetwork.EARTH, l2, Phasor.polar(230, -120), Phasor.of(1));
        builder.load(PowerLoad.constantPower(l1, neutral, 50, 0, 230));
        builder.load(PowerLoad.constantPower(l2, neutral, 50, 0, 230));
        // Other order, other behaviour, one more than before.
        FourWireNetwork network = builder.build()
                .withLoads(List.of(
                        PowerLoad.impedance(l2, neutral, 230, 0, 230),
                        PowerLoad.impedance(l1, neutral, 1150, 0, 230),
                        PowerLoad.impedance(l1, neutral, 1150, 0, 230)));
        // 1 Ω twice, 23 Ω and 230 Ω in series.
        double currentA = Math.sqrt(3) * 230 / 255;
        Flow flow = solve(network);
        assertThat(flow.voltageV(l2, neutral).magnitude()).isCloseTo(currentA * 230, within(1e-4));
        assertThat(flow.voltageV(l1, neutral).magnitude()).isCloseTo(currentA * 23, within(1e-4));
    }

    @Test
    void aLoadBetweenPointsThatNothingConnectsFindsNoRoom() {
        FourWireNetwork.Builder builder = FourWireNetwork.builder();
        int source = builder.point();
        int one = builder.point();
        int other = builder.point();
        builder.source(FourWireNetwork.EARTH, source, Phasor.of(230), Phasor.of(1));
        builder.branch(source, one, Phasor.of(1));
        builder.branch(source, other, Phasor.of(1));
        FourWireNetwork network = builder.build();
        PowerLoad across = PowerLoad.impedance(one, other, 100, 0, 230);
        assertThat(network.hasRoomFor(PowerLoad.impedance(one, source, 100, 0, 230)))
                .isTrue();
        assertThat(network.hasRoomFor(across)).isFalse();
        assertThatThrownBy(() -> network.withLoads(List.of(across))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void neutralOnTheWrongSideLiftsTheEarthOfATtHouseByAbout125V() {
        FourWireNetwork.Builder builder = FourWireNetwork.builder();
        int line = builder.point();
        int islandNeutral = builder.point();
        int mainEarth = builder.point();
        int gridNeutral = builder.point();
        builder.source(islandNeutral, line, Phasor.of(230), Phasor.ZERO);
        int link = builder.branch(islandNeutral, mainEarth, Phasor.ZERO);
        int electrode = builder.branch(mainEarth, FourWireNetwork.EARTH, Phasor.of(30));
        builder.branch(gridNeutral, FourWireNetwork.EARTH, Phasor.of(2));
        builder.load(PowerLoad.impedance(line, gridNeutral, 2300, 0, 230));
        Flow flow = solve(builder.build());
        // 230 V over 23 + 30 + 2 Ω: 4.18 A, times 30 Ω.
        assertThat(flow.voltageV(mainEarth).magnitude()).isCloseTo(230.0 / 55 * 30, within(1e-6));
        assertThat(flow.currentA(link).magnitude()).isCloseTo(230.0 / 55, within(1e-6));
        assertThat(flow.currentA(electrode).magnitude()).isCloseTo(230.0 / 55, within(1e-6));
    }

    @Test
    void twoWaysOfAReturnShareTheCurrentInverselyToTheirResistance() {
        FourWireNetwork.Builder builder = FourWireNetwork.builder();
        int line = builder.point();
        int end = builder.point();
        int start = builder.point();
        builder.branch(start, FourWireNetwork.EARTH, Phasor.ZERO);
        builder.source(start, line, Phasor.of(230), Phasor.of(0.1));
        int neutral = builder.branch(end, start, Phasor.of(1));
        int protective = builder.branch(end, start, Phasor.of(3));
        builder.load(PowerLoad.impedance(line, end, 2300, 0, 230));
        Flow flow = solve(builder.build());
        double total = 230 / (0.1 + 23 + 0.75);
        assertThat(flow.currentA(neutral).magnitude()).isCloseTo(total * 0.75, within(1e-9));
        assertThat(flow.currentA(protective).magnitude()).isCloseTo(total * 0.25, within(1e-9));
    }

    @Test
    void faultIsWhatVoltageOverLoopImpedanceGivesAndALimitedSourceKeepsItsLimit() {
        FourWireNetwork.Builder builder = FourWireNetwork.builder();
        int star = builder.point();
        int line = builder.point();
        int end = builder.point();
        int protective = builder.point();
        builder.branch(star, FourWireNetwork.EARTH, Phasor.ZERO);
        int source = builder.source(star, line, Phasor.of(230), Phasor.ZERO);
        builder.branch(line, end, Phasor.of(0.4));
        int back = builder.branch(protective, star, Phasor.of(0.6));
        FaultFlow fault = builder.build().faults().fault(List.of(new Short(end, protective, 0)));
        assertThat(fault.shortCurrentA(0).magnitude()).isCloseTo(230, within(1e-5));
        assertThat(fault.currentA(source).magnitude()).isCloseTo(230, within(1e-5));
        assertThat(fault.voltageV(protective).magnitude()).isCloseTo(138, within(1e-5));
        FaultFlow limited = fault.lowered(23.0 / 230);
        assertThat(limited.currentA(back).magnitude()).isCloseTo(23, within(1e-6));
        assertThat(limited.voltageV(end).magnitude()).isCloseTo(13.8, within(1e-6));
    }

    @Test
    void nothingEarthedStillHasAnAnswer() {
        FourWireNetwork.Builder builder = FourWireNetwork.builder();
        int neutral = builder.point();
        int line = builder.point();
        builder.source(neutral, line, Phasor.of(230), Phasor.ZERO);
        builder.load(PowerLoad.constantPower(line, neutral, 1000, 200, 230));
        Flow flow = solve(builder.build());
        assertThat(flow.voltageV(line, neutral).magnitude()).isCloseTo(230, within(1e-9));
        assertThat(flow.loadCurrentA(0).magnitude()).isCloseTo(Math.hypot(1000, 200) / 230, within(1e-9));
    }

    @Test
    void faultOfThreeLinesLoadsAllThreeAlikeAlsoAtTheTerminalsAndOverResistance() {
        FourWireNetwork.Builder builder = FourWireNetwork.builder();
        int[] terminal = new int[3];
        int[] end = new int[3];
        int[] source = new int[3];
        for (int i = 0; i < 3; i++) {
            terminal[i] = builder.point();
            end[i] = builder.point();
            source[i] = builder.source(FourWireNetwork.EARTH, terminal[i], Phasor.polar(230, -120.0 * i), Phasor.ZERO);
            builder.branch(terminal[i], end[i], Phasor.of(0.5));
        }
        FaultNetwork faults = builder.build().faults();
        FaultFlow bolted = faults.fault(terminal[0], terminal[1], terminal[2], 0);
        FaultFlow resistive = faults.fault(end[0], end[1], end[2], 0.65);
        double firstA = bolted.currentA(source[0]).magnitude();
        for (int i = 0; i < 3; i++) {
            // Three equal lines to one point: each alone closes on 230 V.
            assertThat(bolted.currentA(source[i]).magnitude()).isCloseTo(firstA, within(1e-6 * firstA));
            assertThat(resistive.currentA(source[i]).magnitude()).isCloseTo(230 / 1.15, within(1e-6));
        }
    }
}
