package tideover.engine.network;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import tideover.engine.site.Circuit;
import tideover.engine.site.PerLine;
import tideover.engine.site.StayOn;
import tideover.engine.site.ThingId;

/** Which circuits to leave out so that the rest draws no more than there is. */
public final class HoldBack {

    private HoldBack() {}

    /**
     * The fewest large circuits without which the rest draws no more than a current on each line; those that must stay
     * on stay.
     *
     * @param allowedA on each line [A]
     * @return largest first; empty where nothing need be left out, or where leaving out does not help
     */
    public static List<ThingId> fewest(Demand demand, Collection<Circuit> circuits, PerLine allowedA) {
        List<Circuit> rest = new ArrayList<>(circuits);
        List<Circuit> movable = new ArrayList<>(circuits);
        movable.removeIf(circuit -> circuit.stayOn() == StayOn.MUST);
        movable.sort(Comparator.comparingDouble((Circuit circuit) ->
                        -demand.findCurrentA(circuit).map(PerLine::sum).orElse(0.0))
                .thenComparing(Circuit::id));
        List<ThingId> leftOut = new ArrayList<>();
        for (Circuit circuit : movable) {
            double before = excessA(demand, rest, allowedA);
            if (before <= 0) break;
            rest.remove(circuit);
            if (excessA(demand, rest, allowedA) < before) leftOut.add(circuit.id());
            else rest.add(circuit);
        }
        return excessA(demand, rest, allowedA) <= 0 ? leftOut : List.of();
    }

    private static double excessA(Demand demand, Collection<Circuit> circuits, PerLine allowedA) {
        PerLine drawnA = demand.togetherA(circuits);
        return Math.max(
                drawnA.l1() - allowedA.l1(), Math.max(drawnA.l2() - allowedA.l2(), drawnA.l3() - allowedA.l3()));
    }
}
