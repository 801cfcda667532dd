package tideover.reference.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.network.flow.Phasor;

/** Ours leaf by leaf and loop by loop, against a library that solves the whole at once, in networks drawn by seed. */
class WholeSolveTest {

    /** Of 230 V, or of the largest current: what two ways of adding the same numbers may differ by. */
    private static final double TOLERANCE_PER_UNIT = 1e-9;

    static Stream<NetworkCase> flows() {
        return IntStream.rangeClosed(1, 80).mapToObj(DrawnNetwork::flow);
    }

    static Stream<NetworkCase> faults() {
        return IntStream.rangeClosed(1001, 1080).mapToObj(DrawnNetwork::fault);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"flows", "faults"})
    void oursIsWhatTheWholeSystemGives(NetworkCase one) {
        Solved ours = Solved.of(one);
        WholeSolve whole = WholeSolve.of(one);
        double worst = 0;
        for (int point = 0; point < one.network().pointCount(); point++)
            worst = Math.max(worst, apart(ours.voltageV(point), whole.voltageV(point)) / 230);
        double largestA = 1;
        for (int branch = 0; branch < one.network().branchCount(); branch++)
            largestA = Math.max(largestA, whole.branchA(branch).magnitude());
        for (int branch = 0; branch < one.network().branchCount(); branch++)
            worst = Math.max(worst, apart(ours.branchA(branch), whole.branchA(branch)) / largestA);
        for (int index = 0; index < one.shorts().size(); index++)
            worst = Math.max(worst, apart(ours.shortA(index), whole.shortA(index)) / largestA);
        assertThat(worst).isLessThan(TOLERANCE_PER_UNIT);
    }

    private static double apart(Phasor one, Phasor other) {
        return one.minus(other).magnitude();
    }
}
