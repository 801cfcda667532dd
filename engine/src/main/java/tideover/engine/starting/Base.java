package tideover.engine.starting;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import tideover.engine.network.Demand;
import tideover.engine.network.Share;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.house.FlowStudy;
import tideover.engine.network.house.HouseLoad;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;

/**
 * What the rest of a house draws beside something: its worst credible coincidence, but no more than the sources give for
 * good beside it. A house that draws more goes dark without any start; that is said by the check of its loading, so that
 * what is said of a start speaks of the start.
 */
final class Base {

    private final List<Share> shares;
    private final Map<Conductor, Double> kept = new EnumMap<>(Conductor.class);
    private final Currents currents;

    /**
     * The rest beside a motor.
     *
     * @param bound at worst, circuits nobody has stated anything of draw all that is left
     */
    static Base beside(Motor motor, SourceGroup group, Demand demand, Bound bound) {
        List<Circuit> others = new ArrayList<>(group.circuits());
        others.removeIf(circuit -> circuit.id().equals(motor.thing().id()));
        boolean anyUnknown =
                others.stream().anyMatch(circuit -> demand.findCurrentA(circuit).isEmpty());
        List<Conductor> filled = new ArrayList<>(0);
        if (anyUnknown && bound == Bound.WORST)
            for (Capacity capacity : group.capacities())
                if (capacity.line() != null && Double.isFinite(capacity.continuousA())) filled.add(capacity.line());
        return new Base(demand.shares(others), group.capacities(), motor.running(), filled);
    }

    /**
     * Shares beside what flows anyway.
     *
     * @param filled lines that are loaded to what the sources give
     */
    Base(List<Share> shares, List<Capacity> capacities, Currents anyway, List<Conductor> filled) {
        this.shares = shares;
        Map<Conductor, Double> sums = new EnumMap<>(Conductor.class);
        for (Share share : shares) sums.merge(share.line(), share.addedA(), Double::sum);
        for (Capacity capacity : capacities) keep(capacity, sums, anyway);
        Currents found = Currents.ZERO;
        for (Share share : shares)
            found = found.plus(share.line(), Currents.lagging(keptA(share), Motors.powerFactorRatio(share.circuit())));
        for (Capacity capacity : capacities)
            if (capacity.line() != null && filled.contains(capacity.line()))
                found = found.plus(
                        capacity.line(),
                        Phasor.of(Math.max(0, roomA(capacity, anyway) - found.meanA(capacity.lines()))));
        currents = found;
    }

    private void keep(Capacity capacity, Map<Conductor, Double> sums, Currents anyway) {
        double sumA = 0;
        for (Conductor line : capacity.lines()) sumA += keptRatio(line) * sums.getOrDefault(line, 0.0);
        double meanA = sumA / capacity.lines().size();
        double roomA = roomA(capacity, anyway);
        if (meanA <= roomA) return;
        for (Conductor line : capacity.lines()) kept.put(line, keptRatio(line) * roomA / meanA);
    }

    private static double roomA(Capacity capacity, Currents anyway) {
        return Math.max(0, capacity.continuousA() - anyway.meanA(capacity.lines()));
    }

    private double keptRatio(Conductor line) {
        return kept.getOrDefault(line, 1.0);
    }

    /** What of a share is drawn [A]. */
    double keptA(Share share) {
        return keptRatio(share.line()) * share.addedA();
    }

    /** Together on each line. */
    Currents currents() {
        return currents;
    }

    /** One by one, as loads of the flow. */
    List<HouseLoad> loads(FlowStudy flows) {
        List<HouseLoad> loads = new ArrayList<>(shares.size() + 3);
        for (Share share : shares) loads.add(flows.load(share.circuit(), share.line(), keptA(share)));
        return loads;
    }
}
