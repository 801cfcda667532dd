package tideover.bench;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.assessment.Studies;
import tideover.engine.network.house.FlowStudy;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.Regime;
import tideover.engine.site.OperatingState;

/** Connected, and island with the grid dead where the house has an island. */
final class Modes {

    private Modes() {}

    static List<OperatingState> of(Studies studies) {
        List<OperatingState> modes =
                new ArrayList<>(List.of(OperatingState.CONNECTED, OperatingState.ISLAND_GRID_DEAD));
        modes.retainAll(studies.installation().states());
        return modes;
    }

    /**
     * What flows in each of them while the house draws.
     *
     * @throws IllegalStateException if the rule book lays down too little, or a house has no solution
     */
    static List<HouseFlow> solve(Studies studies) {
        FlowStudy study = studies.flow();
        if (study == null) throw new IllegalStateException("the rule book of this country says nothing of coincidence");
        List<HouseFlow> flows = new ArrayList<>(2);
        for (OperatingState mode : of(studies)) {
            if (!(study.flow(mode, Regime.DRAWING) instanceof HouseFlow flow))
                throw new IllegalStateException("no solution: " + study.flow(mode, Regime.DRAWING));
            flows.add(flow);
        }
        return flows;
    }
}
