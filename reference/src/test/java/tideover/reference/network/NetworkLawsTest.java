package tideover.reference.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.flow.PowerLoad;
import tideover.engine.network.flow.Short;
import tideover.reference.network.NetworkCase.Wires;

/**
 * The laws of nature on every reference case, from what its file says and ours answers: what flows to a point flows away
 * from it, Ohm's law holds in every conductor, every load draws what its law says, and no power comes from nowhere.
 */
class NetworkLawsTest {

    /**
     * A part that no branch earths hangs on its insulation of 100 MΩ, which no branch shows: at up to 400 V these are
     * 4 µA and 1.6 mW.
     */
    private static final double INSULATION_A = 4e-6;

    private static final double INSULATION_W = 1.6e-3;

    /** For each ampere or watt of the largest in the case: rounding, and loads settled to a billionth of an ampere. */
    private static final double ROUNDING = 1e-9;

    static List<NetworkCase> all() {
        return NetworkCase.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void whatFlowsToAPointFlowsAwayFromIt(NetworkCase one) {
        Solved solved = Solved.of(one);
        Phasor[] sumA = new Phasor[one.network().pointCount()];
        Arrays.fill(sumA, Phasor.ZERO);
        double largestA = 1;
        for (int branch = 0; branch < one.network().branchCount(); branch++) {
            Phasor currentA = solved.branchA(branch);
            largestA = Math.max(largestA, currentA.magnitude());
            add(sumA, one.network().from(branch), one.network().to(branch), currentA);
        }
        int index = 0;
        for (Short made : one.shorts().values()) add(sumA, made.from(), made.to(), solved.shortA(index++));
        for (int i = 0; i < one.loads().size(); i++)
            add(sumA, one.loads().get(i).from(), one.loads().get(i).to(), solved.loadA(i));
        for (int point = 0; point < sumA.length; point++)
            assertThat(sumA[point].magnitude())
                    .as("at point %d", point)
                    .isCloseTo(0, within(ROUNDING * largestA + INSULATION_A));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void ohmsLawHoldsInEveryConductor(NetworkCase one) {
        Solved solved = Solved.of(one);
        for (Wires wires : one.wires()) {
            for (int i = 0; i < wires.branches().size(); i++) {
                int branch = wires.branches().get(i);
                Phasor leftV = solved.voltageV(one.network().from(branch))
                        .minus(solved.voltageV(one.network().to(branch)))
                        .plus(wires.emfV().times(solved.emfRatio()));
                double sizeV = 230;
                for (int j = 0; j < wires.branches().size(); j++) {
                    Phasor dropV = wires.ohm()
                            .get(i)
                            .get(j)
                            .times(solved.branchA(wires.branches().get(j)));
                    leftV = leftV.minus(dropV);
                    sizeV = Math.max(sizeV, dropV.magnitude());
                }
                assertThat(leftV.magnitude()).as("in branch %d", branch).isCloseTo(0, within(ROUNDING * sizeV));
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void everyLoadDrawsWhatItsLawSays(NetworkCase one) {
        Solved solved = Solved.of(one);
        for (int i = 0; i < one.loads().size(); i++) {
            PowerLoad load = one.loads().get(i);
            Phasor voltageV = solved.voltageV(load.from()).minus(solved.voltageV(load.to()));
            double ratio = voltageV.magnitude() / load.ratedVoltageV();
            // Below 0.7 of its rated voltage a load is the impedance it is there.
            double at = Math.max(ratio, 0.7);
            double factor = (load.powerRatio() + at * load.currentRatio() + at * at * load.impedanceRatio())
                    * Math.pow(ratio / at, 2);
            Phasor expected = new Phasor(load.powerW(), load.reactiveVar()).times(factor);
            Phasor drawn = voltageV.times(solved.loadA(i).conjugate());
            assertThat(drawn.minus(expected).magnitude())
                    .as("load %d at %s", i, voltageV)
                    .isCloseTo(0, within(ROUNDING * Math.max(1000, expected.magnitude())));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void noPowerComesFromNowhere(NetworkCase one) {
        Solved solved = Solved.of(one);
        double givenW = 0;
        double takenW = 0;
        double sizeW = 1;
        for (Wires wires : one.wires()) {
            for (int i = 0; i < wires.branches().size(); i++) {
                Phasor conjugateA = solved.branchA(wires.branches().get(i)).conjugate();
                Phasor given = wires.emfV().times(solved.emfRatio()).times(conjugateA);
                givenW += given.real();
                sizeW = Math.max(sizeW, given.magnitude());
                for (int j = 0; j < wires.branches().size(); j++)
                    takenW += wires.ohm()
                            .get(i)
                            .get(j)
                            .times(solved.branchA(wires.branches().get(j)))
                            .times(conjugateA)
                            .real();
            }
        }
        int index = 0;
        for (Short made : one.shorts().values())
            takenW += power(solved, made.from(), made.to(), solved.shortA(index++));
        for (int i = 0; i < one.loads().size(); i++)
            takenW +=
                    power(solved, one.loads().get(i).from(), one.loads().get(i).to(), solved.loadA(i));
        assertThat(takenW).isCloseTo(givenW, within(ROUNDING * sizeW + INSULATION_W));
    }

    private static double power(Solved solved, int from, int to, Phasor currentA) {
        return solved.voltageV(from)
                .minus(solved.voltageV(to))
                .times(currentA.conjugate())
                .real();
    }

    private static void add(Phasor[] sumA, int from, int to, Phasor currentA) {
        sumA[from] = sumA[from].plus(currentA);
        sumA[to] = sumA[to].minus(currentA);
    }
}
