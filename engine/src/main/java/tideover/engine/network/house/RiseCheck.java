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
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Status;
import tideover.engine.site.ThingId;

/** The voltage rise from the origin to a new or altered inverter that feeds all it can is small enough for it to go on feeding. */
final class RiseCheck implements Check<FlowStudies> {

    @Override
    public String id() {
        return "voltage.rise";
    }

    @Override
    public void judge(FlowStudies studies, Judging judging) {
        Installation installation = studies.installation();
        Optional<Limit> limit = judging.limit("voltage.riseRatio");
        FlowStudy flows = studies.flows();
        for (Inverter inverter : installation.inverters()) {
            if (installation.status(inverter.id()) == Status.EXISTING) continue;
            Judging.Draft draft = judging.at(inverter.id(), OperatingState.CONNECTED);
            if (limit.isEmpty() || flows == null) draft.openForLimit("voltage.riseRatio");
            else judge(studies, flows, inverter, limit.get(), draft.by(limit.get()));
        }
    }

    private static void judge(
            FlowStudies studies, FlowStudy flows, Inverter inverter, Limit limit, Judging.Draft draft) {
        Installation installation = studies.installation();
        draft.on(inverter.fact("feedInPowerW"));
        List<FactId> missing = new ArrayList<>(0);
        if (flows.demand().findFeedInA(inverter).isEmpty()) missing.add(inverter.fact("feedInPowerW"));
        for (ThingId id : installation.wayFromSupply(inverter.id())) {
            Fed fed = installation.findFed(id).orElse(null);
            if (fed == null || fed.cable() == null) continue;
            if (fed.cable().lengthM() == null) missing.add(fed.fact("cable.lengthM"));
            if (fed.cable().crossSectionMm2() == null) missing.add(fed.fact("cable.crossSectionMm2"));
        }
        if (!missing.isEmpty()) {
            draft.openFor(missing);
            return;
        }
        if (!(flows.flow(OperatingState.CONNECTED, Regime.FEEDING) instanceof HouseFlow flow)) {
            draft.notMet("voltage.unsolved", name(inverter.id()), name(inverter.id()));
            return;
        }
        OptionalDouble drop = flow.findDropRatio(inverter.id(), ThingId.SUPPLY);
        if (drop.isEmpty()) return;
        double riseRatio = Math.max(0, -drop.getAsDouble());
        double limitRatio = limit.requireNumber();
        draft.measure(riseRatio, limitRatio, Unit.PERCENT);
        PhraseArg[] said = {name(inverter.id()), amount(riseRatio, Unit.PERCENT), amount(limitRatio, Unit.PERCENT)};
        if (riseRatio > limitRatio) draft.notMet("voltage.rise.above", said);
        else draft.met("voltage.rise.met", said);
    }
}
