package tideover.engine.network;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
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
     * @return worst lines first; empty where nothing need be left out, or where leaving out does not help
     */
    public static List<ThingId> fewest(Demand demand, Collection<Circuit> circuits, PerLine allowedA) {
        List<Circuit> rest = new ArrayList<>(circuits);
        List<Circuit> movable = new ArrayList<>(circuits);
        movable.removeIf(circuit -> circuit.stayOn() == StayOn.MUST);
        movable.sort(Comparator.comparingDouble((Circuit circuit) ->
                        -demand.findCurrentA(circuit).map(PerLine::sum).orElse(0.0))
                .thenComparing(Circuit::id));
        List<Circuit> leftOut = new ArrayList<>();
        while (!fits(demand, rest, allowedA)) {
            Conductor worst = worstLine(demand.togetherA(rest), allowedA);
            Circuit next = movable.stream()
                    .filter(circuit -> demand.findCurrentA(circuit)
                                    .map(each -> each.of(worst))
                                    .orElse(0.0)
                            > 0)
                    .findFirst()
                    .orElse(null);
            if (next == null) return List.of();
            movable.remove(next);
            rest.remove(next);
            leftOut.add(next);
        }
        bringBack(demand, rest, leftOut, allowedA);
        return leftOut.stream().map(Circuit::id).toList();
    }

    /** What was left out early may stay after all, now that others are left out. */
    private static void bringBack(Demand demand, List<Circuit> rest, List<Circuit> leftOut, PerLine allowedA) {
        for (Circuit circuit : List.copyOf(leftOut)) {
            rest.add(circuit);
            if (fits(demand, rest, allowedA)) leftOut.remove(circuit);
            else rest.remove(circuit);
        }
    }

    private static boolean fits(Demand demand, Collection<Circuit> circuits, PerLine allowedA) {
        PerLine drawnA = demand.togetherA(circuits);
        return drawnA.l1() <= allowedA.l1() && drawnA.l2() <= allowedA.l2() && drawnA.l3() <= allowedA.l3();
    }

    private static Conductor worstLine(PerLine drawnA, PerLine allowedA) {
        double l1 = drawnA.l1() - allowedA.l1();
        double l2 = drawnA.l2() - allowedA.l2();
        double l3 = drawnA.l3() - allowedA.l3();
        if (l1 >= l2 && l1 >= l3) return Conductor.L1;
        return l2 >= l3 ? Conductor.L2 : Conductor.L3;
    }
}
