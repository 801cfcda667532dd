package tideover.engine.network.house;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Board;
import tideover.engine.site.Circuit;
import tideover.engine.site.FactId;
import tideover.engine.site.OperatingState;
import tideover.engine.site.SupplyLines;
import tideover.engine.site.ThingId;

/** The worst credible coincidence leaves the three voltages of every board balanced enough for motors, in either mode. */
final class VoltageUnbalanceCheck implements Check<FlowStudies> {

    private static final List<OperatingState> STATES =
            List.of(OperatingState.CONNECTED, OperatingState.ISLAND_GRID_DEAD);

    @Override
    public String id() {
        return "loading.voltageUnbalance";
    }

    @Override
    public void judge(FlowStudies studies, Judging judging) {
        Installation installation = studies.installation();
        // Only where island operation or a change has touched what the lines carry.
        if (installation.formingInverters().isEmpty() || installation.supply().lines() == SupplyLines.ONE) return;
        Optional<Limit> limit = judging.limit("loading.voltageUnbalanceRatio");
        for (OperatingState state : STATES) {
            Judging.Draft draft = judging.at(ThingId.SUPPLY, state);
            if (limit.isEmpty() || studies.flows() == null) draft.openForLimit("loading.voltageUnbalanceRatio");
            else judge(studies.flows(), installation, state, limit.get(), draft.by(limit.get()));
        }
    }

    private static void judge(
            FlowStudy flows, Installation installation, OperatingState state, Limit limit, Judging.Draft draft) {
        if (!(flows.flow(state, Regime.DRAWING) instanceof HouseFlow flow)) return;
        ThingId worst = null;
        double worstRatio = 0;
        for (Board board : installation.boards()) {
            OptionalDouble ratio = flow.findUnbalanceRatio(board.id());
            if (ratio.isEmpty() || ratio.getAsDouble() < worstRatio) continue;
            worst = board.id();
            worstRatio = ratio.getAsDouble();
        }
        if (worst == null) {
            draft.notApplicable("loading.voltageUnbalance.none");
            return;
        }
        double limitRatio = limit.requireNumber();
        draft.measure(worstRatio, limitRatio, Unit.PERCENT);
        List<FactId> missing = new ArrayList<>(flows.missingCables());
        for (Circuit circuit : installation.circuits())
            if (installation.in(state).findSource(circuit).isPresent())
                missing.addAll(flows.demand().missing(circuit));
        PhraseArg[] said = {name(worst), amount(worstRatio, Unit.PERCENT), amount(limitRatio, Unit.PERCENT)};
        if (worstRatio > limitRatio) draft.notMet("loading.voltageUnbalance.above", said);
        else if (!missing.isEmpty()) draft.openFor(missing);
        else draft.met("loading.voltageUnbalance.met", said);
    }
}
