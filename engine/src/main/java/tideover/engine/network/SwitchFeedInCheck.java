package tideover.engine.network;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PerLine;

/** What inverters feed to the grid through the islanding switch is above neither its rated current nor its back-up fuse. */
final class SwitchFeedInCheck implements Check<NetworkStudies> {

    @Override
    public String id() {
        return "switch.feedIn";
    }

    @Override
    public void judge(NetworkStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit("switch.feedIn");
        for (IslandingSwitch device : studies.installation().islandingSwitches()) {
            Judging.Draft draft = judging.at(device.id(), OperatingState.CONNECTED);
            if (limit.isEmpty() || studies.demand() == null) draft.openForLimit("switch.feedIn");
            else judge(studies.demand(), studies, device, draft.by(limit.get()));
        }
    }

    private static void judge(Demand demand, NetworkStudies studies, IslandingSwitch device, Judging.Draft draft) {
        List<FactId> missing = new ArrayList<>(0);
        draft.on(device.fact("ratedCurrentA"));
        if (device.ratedCurrentA() == null) missing.add(device.fact("ratedCurrentA"));
        double allowedA = device.ratedCurrentA() == null ? Double.POSITIVE_INFINITY : device.ratedCurrentA();
        Double fuseA = Upstream.find(studies.installation(), device.id())
                .map(before -> before.device().ratedCurrentA())
                .orElse(null);
        if (fuseA != null) allowedA = Math.min(allowedA, fuseA);
        PerLine fedA = PerLine.ZERO;
        for (Inverter inverter : demand.invertersBehind(device.id())) {
            draft.on(inverter.fact("feedInPowerW"));
            Optional<PerLine> own = demand.findFeedInA(inverter);
            if (own.isEmpty()) missing.add(inverter.fact("feedInPowerW"));
            fedA = fedA.plus(own.orElse(PerLine.ZERO));
        }
        draft.measure(fedA.largest(), allowedA, Unit.A);
        if (fedA.largest() > allowedA)
            draft.notMet(
                    "switch.feedIn.above", name(device.id()), amount(fedA.largest(), Unit.A), amount(allowedA, Unit.A));
        else if (!missing.isEmpty()) draft.openFor(missing);
        else
            draft.met("switch.feedIn.met", name(device.id()), amount(fedA.largest(), Unit.A), amount(allowedA, Unit.A));
    }
}
