package tideover.engine.installation.storage;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.FactId;
import tideover.engine.site.FrequencyResponse;
import tideover.engine.site.Inverter;
import tideover.engine.site.InverterRole;
import tideover.engine.site.OperatingState;

/**
 * What following inverters feed into an island in which nothing is switched on goes into the battery: together they are
 * above neither its charging power nor what the forming inverters bear, and each throttles when the battery is full.
 */
final class CoupledPowerCheck implements Check<Installation> {

    @Override
    public String id() {
        return "storage.coupledPower";
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        Optional<Limit> limit = judging.limit("storage.coupledPower");
        List<Inverter> coupled = installation.inverters().stream()
                .filter(inverter -> inverter.role() != InverterRole.GRID_FORMING && installation.staysOn(inverter))
                .toList();
        for (Inverter inverter : coupled) {
            Judging.Draft draft = judging.at(inverter.id(), OperatingState.ISLAND_GRID_DEAD);
            if (limit.isEmpty()) draft.openForLimit("storage.coupledPower");
            else judge(installation, inverter, coupled, draft.by(limit.get()));
        }
    }

    private static void judge(
            Installation installation, Inverter inverter, List<Inverter> coupled, Judging.Draft draft) {
        Uptake uptake = Uptake.of(installation);
        List<FactId> missing = new ArrayList<>(uptake.missing());
        draft.on(uptake.facts());
        double coupledW = 0;
        for (Inverter each : coupled) {
            Double feedInW = each.feedInPowerW() != null ? each.feedInPowerW() : each.ratedPowerVa();
            draft.on(each.fact(each.feedInPowerW() != null ? "feedInPowerW" : "ratedPowerVa"));
            if (feedInW == null) missing.add(each.fact("feedInPowerW"));
            else coupledW += feedInW;
        }
        draft.on(inverter.fact("frequencyResponse"));
        if (Double.isFinite(uptake.smallestW())) draft.measure(coupledW, uptake.smallestW(), Unit.W);
        if (inverter.role() == null) missing.add(inverter.fact("role"));
        if (inverter.frequencyResponse() == null) missing.add(inverter.fact("frequencyResponse"));
        PhraseArg fed = amount(coupledW, Unit.W);
        if (inverter.frequencyResponse() == FrequencyResponse.NONE)
            draft.notMet("storage.coupledPower.noThrottle", name(inverter.id()), word(FrequencyResponse.NONE));
        else if (coupledW > uptake.chargeW())
            draft.notMet(
                    "storage.coupledPower.aboveCharge", name(inverter.id()), fed, amount(uptake.chargeW(), Unit.W));
        else if (coupledW > uptake.formingW())
            draft.notMet(
                    "storage.coupledPower.aboveForming", name(inverter.id()), fed, amount(uptake.formingW(), Unit.W));
        else if (!missing.isEmpty()) draft.openFor(missing);
        else draft.met("storage.coupledPower.met", name(inverter.id()), fed, amount(uptake.smallestW(), Unit.W));
    }
}
