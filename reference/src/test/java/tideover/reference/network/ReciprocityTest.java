package tideover.reference.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.network.flow.Flow;
import tideover.engine.network.flow.FourWireNetwork;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.flow.Short;
import tideover.reference.network.NetworkCase.Wires;

/**
 * Reciprocity: a voltage in one branch drives the same current through another as that voltage in the other drives through
 * the one. So it is in every network of symmetric impedances, however it is meshed or coupled.
 */
class ReciprocityTest {

    private static final double VOLTAGE_V = 230;

    static List<NetworkCase> all() {
        return NetworkCase.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void branchesActOnEachOtherAlike(NetworkCase one) {
        List<Integer> single = one.wires().stream()
                .filter(wires -> wires.branches().size() == 1)
                .map(wires -> one.wires().indexOf(wires))
                .toList();
        Flow[] flows = new Flow[single.size()];
        for (int i = 0; i < flows.length; i++) flows[i] = drivenAt(one, single.get(i));
        for (int i = 0; i < flows.length; i++)
            for (int j = 0; j < i; j++) {
                Phasor there = flows[i].currentA(branch(one, single.get(j)));
                Phasor back = flows[j].currentA(branch(one, single.get(i)));
                // A part that nothing earths hangs on 100 MΩ, whose 2 µA at 230 V are spread alike too; what is left is
                // rounding, of the larger of the currents the two drive through themselves.
                double ownA = Math.max(
                        flows[i].currentA(branch(one, single.get(i))).magnitude(),
                        flows[j].currentA(branch(one, single.get(j))).magnitude());
                assertThat(there.minus(back).magnitude())
                        .as("%d and %d", single.get(i), single.get(j))
                        .isCloseTo(0, within(1e-9 * Math.max(1, ownA)));
            }
    }

    private static int branch(NetworkCase one, int wires) {
        return one.wires().get(wires).branches().get(0);
    }

    /** The case with its fault, without loads, and with one voltage only. */
    private static Flow drivenAt(NetworkCase one, int driven) {
        FourWireNetwork.Builder builder = FourWireNetwork.builder();
        builder.points(one.network().pointCount() - 1);
        for (int w = 0; w < one.wires().size(); w++) {
            Wires wires = one.wires().get(w);
            List<Integer> from =
                    wires.branches().stream().map(one.network()::from).toList();
            List<Integer> to = wires.branches().stream().map(one.network()::to).toList();
            boolean isCoupled =
                    wires.ohm().size() > 1 && wires.ohm().get(0).get(1).magnitude() > 0;
            if (isCoupled) builder.coupled(from, to, wires.ohm());
            else
                for (int i = 0; i < from.size(); i++)
                    builder.source(
                            from.get(i),
                            to.get(i),
                            Phasor.of(w == driven ? VOLTAGE_V : 0),
                            wires.ohm().get(i).get(i));
        }
        for (Short made : one.shorts().values())
            builder.branch(made.from(), made.to(), Phasor.of(Math.max(made.faultOhm(), 1e-4)));
        if (builder.build().solve() instanceof Flow flow) return flow;
        throw new AssertionError(one + " is not solved");
    }
}
