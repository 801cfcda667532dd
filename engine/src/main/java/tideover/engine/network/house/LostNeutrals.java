package tideover.engine.network.house;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.network.flow.Phasor;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;

/** Interrupts one neutral after the other. */
final class LostNeutrals {

    /** Less than this is no more than the usual changes of voltage (own choice). */
    private static final double NOTICEABLE_RATIO = 1.02;

    private final FlowStudy study;
    private final Installation installation;
    private final OperatingState state;
    private final View view;

    LostNeutrals(FlowStudy study, Installation installation, OperatingState state) {
        this.study = study;
        this.installation = installation;
        this.state = state;
        this.view = installation.in(state);
    }

    /** Each place where it lifts a voltage above what it is when all is whole, the highest first. */
    List<LostNeutral> all() {
        List<LostNeutral> all = new ArrayList<>();
        if (!(study.flow(state, Regime.DRAWING) instanceof HouseFlow whole)) return all;
        for (Fed thing : installation.all(Fed.class)) {
            boolean several = view.liveLines(thing).size() > 1
                    && (installation.findFeed(thing.id(), Conductor.N).isPresent()
                            || installation.findFeed(thing.id(), Conductor.PEN).isPresent());
            // What is inside one three-phase device is its maker's business.
            if (several && !(thing instanceof Circuit)) find(thing, whole).ifPresent(all::add);
        }
        all.sort(Comparator.comparingDouble(
                lost -> lost.voltageV() == null ? Double.NEGATIVE_INFINITY : -lost.voltageV()));
        return List.copyOf(all);
    }

    private Optional<LostNeutral> find(Fed thing, HouseFlow whole) {
        HouseFlowResult result = study.withoutNeutral(thing, state);
        if (result instanceof Unsolved unsolved)
            return Optional.of(new LostNeutral(thing.id(), unsolved.worst(), Conductor.L1, null));
        HouseFlow broken = (HouseFlow) result;
        LostNeutral worst = null;
        for (Circuit circuit : installation.circuits())
            for (Conductor line : view.liveLines(circuit)) worst = higher(thing, circuit, line, broken, whole, worst);
        return Optional.ofNullable(worst);
    }

    private static @Nullable LostNeutral higher(
            Fed thing,
            Circuit circuit,
            Conductor line,
            HouseFlow broken,
            HouseFlow whole,
            @Nullable LostNeutral worst) {
        Optional<Phasor> now = broken.findVoltageV(circuit.id(), line);
        Optional<Phasor> before = whole.findVoltageV(circuit.id(), line);
        if (now.isEmpty() || before.isEmpty()) return worst;
        double voltageV = now.get().magnitude();
        if (voltageV <= NOTICEABLE_RATIO * before.get().magnitude()) return worst;
        Double highestV = worst == null ? null : worst.voltageV();
        return highestV != null && highestV >= voltageV
                ? worst
                : new LostNeutral(thing.id(), circuit.id(), line, voltageV);
    }
}
