package tideover.engine.network.house;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Stance;
import tideover.engine.rules.Topic;
import tideover.engine.rules.Unit;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PerLine;
import tideover.engine.site.Supply;
import tideover.engine.site.SupplyLines;
import tideover.engine.site.ThingId;

/** What inverters feed to the grid on one line is not above that on another by more than the grid operator allows. */
final class UnbalanceCheck implements Check<FlowStudies> {

    @Override
    public String id() {
        return "loading.unbalance";
    }

    @Override
    public void judge(FlowStudies studies, Judging judging) {
        Installation installation = studies.installation();
        Supply supply = installation.supply();
        if (installation.inverters().isEmpty() || supply.lines() == SupplyLines.ONE) return;
        Optional<Limit> limit = judging.limit("loading.unbalanceVa");
        Judging.Draft draft = judging.at(ThingId.SUPPLY, OperatingState.CONNECTED);
        if (judging.rules().stance(Topic.LOADING) == Stance.UNKNOWN || studies.flows() == null)
            draft.openForLimit("loading.unbalanceVa");
        else if (limit.isEmpty()) draft.notApplicable("loading.unbalance.noLimit");
        else judge(studies.flows(), installation, limit.get(), draft.by(limit.get()));
    }

    private static void judge(FlowStudy flows, Installation installation, Limit limit, Judging.Draft draft) {
        List<FactId> missing = new ArrayList<>(0);
        PerLine fedA = PerLine.ZERO;
        for (Inverter inverter : installation.inverters()) {
            draft.on(inverter.fact("feedInPowerW"));
            Optional<PerLine> own = flows.demand().findFeedInA(inverter);
            if (own.isEmpty()) missing.add(inverter.fact("feedInPowerW"));
            fedA = fedA.plus(own.orElse(PerLine.ZERO));
        }
        double smallestA = Math.min(fedA.l1(), Math.min(fedA.l2(), fedA.l3()));
        double apartVa = (fedA.largest() - smallestA) * flows.nominalVoltageV();
        double limitVa = limit.requireNumber();
        draft.measure(apartVa, limitVa, Unit.VA);
        PhraseArg[] said = {name(ThingId.SUPPLY), amount(apartVa, Unit.VA), amount(limitVa, Unit.VA)};
        if (apartVa > limitVa) draft.notMet("loading.unbalance.above", said);
        else if (!missing.isEmpty()) draft.openFor(missing);
        else draft.met("loading.unbalance.met", said);
    }
}
