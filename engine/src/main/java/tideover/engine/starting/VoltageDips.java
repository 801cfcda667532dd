package tideover.engine.starting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.house.FlowStudy;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.HouseFlowResult;
import tideover.engine.network.house.HouseLoad;
import tideover.engine.site.Board;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/** Voltages at the boards before and during a start, from two flows of the house. */
final class VoltageDips {

    private final Installation installation;
    private final FlowStudy flows;
    private final Map<OperatingState, Set<ThingId>> interrupted = new EnumMap<>(OperatingState.class);

    VoltageDips(Installation installation, FlowStudy flows) {
        this.installation = installation;
        this.flows = flows;
    }

    /** What keeps anybody from saying how far the voltage falls. */
    Optional<Dips> findObstacle(Circuit circuit, OperatingState state) {
        if (interrupted(state).contains(circuit.id())) return Optional.of(new Dips.Interrupted());
        List<FactId> missing = missingOnTheWay(circuit, state);
        return missing.isEmpty() ? Optional.empty() : Optional.of(new Dips.Unknown(missing));
    }

    /**
     * Voltages before and during the start of a motor.
     *
     * @param others what else is drawn
     */
    Dips dips(Motor motor, List<HouseLoad> others, OperatingState state) {
        List<HouseLoad> loads = new ArrayList<>(others);
        loads.removeIf(load -> interrupted(state).contains(load.thing().id()));
        HouseFlowResult before = flows.flow(state, loads);
        double nominalVoltageV = flows.nominalVoltageV();
        Phasor start =
                Currents.lagging(motor.startA(), motor.startPowerFactorRatio()).conjugate();
        for (Conductor line : motor.lines())
            loads.add(new HouseLoad(
                    motor.thing(),
                    line,
                    start.real() * nominalVoltageV,
                    start.imaginary() * nominalVoltageV,
                    nominalVoltageV,
                    HouseLoad.Behaviour.IMPEDANCE));
        HouseFlowResult during = flows.flow(state, loads);
        if (!(before instanceof HouseFlow quiet) || !(during instanceof HouseFlow busy))
            return new Dips.Collapsed(motor);
        List<Dips.Dip> dips = new ArrayList<>();
        View view = installation.in(state);
        for (Board board : installation.boards())
            if (view.findSource(board).isPresent())
                findDip(board.id(), quiet, busy).ifPresent(dips::add);
        if (motor.thing() instanceof Circuit circuit)
            findDip(circuit.id(), quiet, busy).ifPresent(dips::add);
        dips.sort(Comparator.comparingDouble((Dips.Dip dip) -> -dip.ratio()));
        return new Dips.Solved(motor, dips);
    }

    private Optional<Dips.Dip> findDip(ThingId place, HouseFlow before, HouseFlow during) {
        Dips.Dip worst = null;
        for (Conductor line : installation.lines(place)) {
            Optional<Phasor> quiet = before.findVoltageV(place, line);
            Optional<Phasor> busy = during.findVoltageV(place, line);
            if (quiet.isEmpty() || busy.isEmpty()) continue;
            double beforeV = quiet.get().magnitude();
            double duringV = busy.get().magnitude();
            double ratio = (beforeV - duringV) / flows.nominalVoltageV();
            if (worst == null || ratio > worst.ratio()) worst = new Dips.Dip(place, beforeV, duringV, ratio);
        }
        return Optional.ofNullable(worst);
    }

    /** Circuits whose neutral is not through: what they draw hangs on what else runs. */
    private Set<ThingId> interrupted(OperatingState state) {
        return interrupted.computeIfAbsent(state, each -> {
            View view = installation.in(each);
            Set<ThingId> found = new HashSet<>();
            for (Circuit circuit : installation.circuits())
                if (circuit.has(Conductor.N) || circuit.has(Conductor.PEN))
                    view.findSource(circuit)
                            .filter(source ->
                                    view.findNeutralPath(source, circuit.id()).isEmpty())
                            .ifPresent(source -> found.add(circuit.id()));
            return found;
        });
    }

    private List<FactId> missingOnTheWay(Circuit circuit, OperatingState state) {
        View view = installation.in(state);
        List<FactId> missing = new ArrayList<>(0);
        for (Conductor line : installation.lines(circuit.id()))
            for (ThingId source : view.sourcesAt(circuit.id(), line))
                view.findLinePath(source, circuit.id(), line).ifPresent(path -> {
                    for (Edge edge : path.edges())
                        for (FactId fact : flows.missing(edge)) if (!missing.contains(fact)) missing.add(fact);
                });
        return missing;
    }
}
