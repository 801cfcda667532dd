package tideover.reference.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.house.FlowStudy;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.HouseFlowResult;
import tideover.engine.network.house.Regime;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Site;
import tideover.engine.site.Thing;
import tideover.reference.Houses;

/** L1, L2 and L3 are names to what flows in a house too, in every state. */
class LineRotationTest {

    /** Loads are settled to a billionth of an ampere; over some ohm that is far below a microvolt. */
    private static final double TOLERANCE = 1e-6;

    private static final Map<Conductor, Conductor> NEXT =
            Map.of(Conductor.L1, Conductor.L2, Conductor.L2, Conductor.L3, Conductor.L3, Conductor.L1);

    static List<Path> threeLines() {
        return Houses.threeLines().stream().filter(LineRotationTest::hasFlows).toList();
    }

    /** Where the rule book says nothing of coincidence nobody knows what flows. */
    private static boolean hasFlows(Path file) {
        return Houses.studies(Houses.read(file)).flow() != null;
    }

    /** On the next line each voltage and current is what it was on the one before, a third of a turn later. */
    @ParameterizedTest
    @MethodSource("threeLines")
    void turningAllLinesByOneTurnsWhatFlowsAndNothingElse(Path file) {
        Site site = Houses.read(file);
        FlowStudy before = flows(site);
        FlowStudy after = flows(Houses.turned(file));
        for (OperatingState state : OperatingState.values())
            for (Regime regime : Regime.values()) {
                HouseFlow straight = solved(before.flow(state, regime));
                HouseFlow turned = solved(after.flow(state, regime));
                for (Thing thing : site.planned().values()) if (thing instanceof Fed fed) turned(straight, turned, fed);
            }
    }

    private static void turned(HouseFlow straight, HouseFlow turned, Fed thing) {
        Phasor third = Phasor.polar(1, -120);
        for (Conductor conductor : Conductor.values()) {
            Conductor next = NEXT.getOrDefault(conductor, conductor);
            String what = "%s of %s in %s, %s".formatted(next, thing.id(), straight.state(), straight.regime());
            Optional<Phasor> beforeV = straight.findVoltageToEarthV(thing.id(), conductor);
            Optional<Phasor> afterV = turned.findVoltageToEarthV(thing.id(), next);
            assertThat(afterV.isPresent()).as(what).isEqualTo(beforeV.isPresent());
            if (afterV.isPresent() && beforeV.isPresent())
                same(afterV.get(), beforeV.get().times(third), "voltage on " + what);
            Phasor beforeA = straight.currentA(thing, conductor);
            same(turned.currentA(thing, next), beforeA.times(third), "current in " + what);
        }
    }

    private static FlowStudy flows(Site site) {
        return Objects.requireNonNull(Houses.studies(site).flow(), "flows of " + site);
    }

    private static HouseFlow solved(HouseFlowResult result) {
        if (result instanceof HouseFlow flow) return flow;
        throw new AssertionError(result);
    }

    private static void same(Phasor actual, Phasor expected, String what) {
        assertThat(actual.minus(expected).magnitude()).as(what).isCloseTo(0, within(TOLERANCE));
    }
}
