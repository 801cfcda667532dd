package tideover.reference.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.wiring.net.Edit;
import tideover.engine.wiring.net.Edit.End;
import tideover.engine.wiring.net.SwitchingNet;

/**
 * Toy harness A: seven wires, 63 mistakes, and which of four steps reveals which. Source: the commissioning reference of
 * this project, worked example I3, solved there by complete enumeration with other code.
 */
class ToyHarnessTest {

    private static final int PLUS = 0;
    private static final int ZERO = 1;
    private static final int HIGH = 2;
    private static final int LOW = 3;
    private static final int BREAK = 0;
    private static final int MAKE = 1;
    private static final int STOP = 2;
    private static final int COIL_LEAD = 3;

    private final SwitchingNet.Builder builder = new SwitchingNet.Builder();
    private final int plus = builder.node();
    private final int zero = builder.node();
    private final int auxFeed = builder.node();
    private final int out = builder.node();
    private final int a1 = builder.node();
    private final int a2 = builder.node();
    private final int coilEnd = builder.node();
    private final int breakEnd = builder.node();
    private final int makeEnd = builder.node();
    private final int breakInput = builder.node();
    private final int makeInput = builder.node();
    private final int stopFeed = builder.node();
    private final int stopEnd = builder.node();
    private final int stopInput = builder.node();
    private final SwitchingNet harness = harness();

    private SwitchingNet harness() {
        // The end named first is that at the controller.
        builder.core(plus, auxFeed);
        builder.core(out, a1);
        builder.core(zero, a2);
        builder.core(breakInput, breakEnd);
        builder.core(makeInput, makeEnd);
        builder.core(stopInput, stopEnd);
        builder.core(plus, stopFeed);
        builder.contact(auxFeed, breakEnd, BREAK);
        builder.contact(auxFeed, makeEnd, MAKE);
        builder.contact(stopFeed, stopEnd, STOP);
        // Lifted at the coil: the wire itself stays where it was.
        builder.contact(a2, coilEnd, COIL_LEAD);
        builder.rail(plus, PLUS);
        builder.rail(zero, ZERO);
        builder.rail(out, HIGH);
        builder.rail(out, LOW);
        return builder.build();
    }

    private Map<String, Edit> mistakes() {
        Map<String, Edit> all = new LinkedHashMap<>();
        for (int a = 0; a < 7; a++) {
            all.put("open w" + (a + 1), Edit.opened(a));
            all.put("w" + (a + 1) + " to P", Edit.joined(harness.cores().node(a, End.TO), plus));
            all.put("w" + (a + 1) + " to N", Edit.joined(harness.cores().node(a, End.TO), zero));
            for (int b = a + 1; b < 7; b++) {
                String pair = " w%d-w%d".formatted(a + 1, b + 1);
                all.put(
                        "short" + pair,
                        Edit.joined(
                                harness.cores().node(a, End.TO), harness.cores().node(b, End.TO)));
                all.put("swap" + pair, Edit.exchanged(harness.cores(), a, End.FROM, b, End.FROM));
            }
        }
        return all;
    }

    /** One step: the output, whether the stop button is pressed, whether the lead w3 is lifted at the coil. */
    private record Step(boolean on, boolean stopped, boolean lifted) {}

    private static final List<Step> STEPS = List.of(
            new Step(false, false, false),
            new Step(true, false, false),
            new Step(false, true, false),
            new Step(true, false, true));

    private String read(Edit mistake, Step step) {
        SwitchingNet net = harness.with(mistake);
        SwitchingNet.Solved solved = net.solved();
        boolean attracted = false;
        int live = 1 << PLUS | 1 << ZERO | (step.on ? 1 << HIGH : 1 << LOW);
        for (int round = 0; round < 8; round++) {
            long closed = attracted ? 1L << MAKE : 1L << BREAK;
            if (!step.stopped) closed |= 1L << STOP;
            if (!step.lifted) closed |= 1L << COIL_LEAD;
            net.solve(closed, live, solved);
            int highs = 1 << PLUS | 1 << HIGH;
            int lows = 1 << ZERO | 1 << LOW;
            for (int node : new int[] {plus, zero, out})
                if ((solved.potentials(node) & highs) != 0 && (solved.potentials(node) & lows) != 0) return "blown";
            boolean one = level(solved, a1) == 1 && level(solved, coilEnd) == 0
                    || level(solved, a1) == 0 && level(solved, coilEnd) == 1;
            if (one == attracted)
                return "" + bit(solved, breakInput) + bit(solved, makeInput) + bit(solved, stopInput)
                        + (attracted ? 1 : 0);
            attracted = one;
        }
        return "chatter";
    }

    private static int level(SwitchingNet.Solved solved, int node) {
        int at = solved.potentials(node);
        return (at & (1 << PLUS | 1 << HIGH)) != 0 ? 1 : at != 0 ? 0 : -1;
    }

    private static int bit(SwitchingNet.Solved solved, int node) {
        return Math.max(0, level(solved, node));
    }

    private TreeSet<String> notRevealed(String steps) {
        TreeSet<String> hidden = new TreeSet<>(mistakes().keySet());
        for (String number : steps.split("\\+")) {
            Step step = STEPS.get(Integer.parseInt(number) - 1);
            String healthy = read(Edit.NONE, step);
            hidden.removeIf(name -> !read(mistakes().get(name), step).equals(healthy));
        }
        return hidden;
    }

    @Test
    void harnessHasSixtyThreeMistakes() {
        assertThat(mistakes()).hasSize(63);
    }

    @ParameterizedTest(name = "step {0} reads {1}")
    @CsvSource({"1, 1010", "2, 0111", "3, 1000", "4, 1010"})
    void healthyHarnessReadsAsExpected(int step, String expected) {
        assertThat(read(Edit.NONE, STEPS.get(step - 1))).isEqualTo(expected);
    }

    @ParameterizedTest(name = "steps {0}: {1} revealed")
    @CsvSource({"1, 37", "2, 39", "3, 32", "4, 33", "1+2, 52", "1+2+3, 55", "1+2+3+4, 56"})
    void stepsRevealAsManyAsInTheWorkedExample(String steps, int revealed) {
        assertThat(63 - notRevealed(steps).size()).isEqualTo(revealed);
    }

    @ParameterizedTest(name = "steps {0} leave {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1+2 | short w1-w6, short w1-w7, swap w1-w7, swap w2-w3, short w2-w5, short w6-w7, swap w6-w7, w1 to P,"
                        + " w3 to N, w6 to P, w7 to P",
                "1+2+3 | short w1-w7, swap w1-w7, swap w2-w3, short w2-w5, swap w6-w7, w1 to P, w3 to N, w7 to P",
                "1+2+3+4 | short w1-w7, w1 to P, w7 to P, w3 to N, swap w1-w7, swap w6-w7, swap w2-w3"
            })
    void sameMistakesStayHidden(String steps, String hidden) {
        assertThat(notRevealed(steps)).containsExactlyInAnyOrder(hidden.split(", ?"));
    }

    @ParameterizedTest(name = "step {0} alone reveals {1}")
    @CsvSource({"1, 1", "2, 11", "3, 3", "4, 1"})
    void noStepCanBeDropped(int step, int own) {
        List<String> others = new ArrayList<>(List.of("1", "2", "3", "4"));
        others.remove(Integer.toString(step));
        assertThat(notRevealed(String.join("+", others)).size()
                        - notRevealed("1+2+3+4").size())
                .isEqualTo(own);
    }
}
