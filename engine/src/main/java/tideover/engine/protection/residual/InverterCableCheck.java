package tideover.engine.protection.residual;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.RcdType;
import tideover.engine.site.ResidualDevice;

/**
 * In TT the grid feeds a fault in the inverter's own supply cable while connected: an RCD of the maker's type stays before
 * it. In TN the device at its board end clears it, which the disconnection check judges.
 */
final class InverterCableCheck implements Check<ProtectionStudies> {

    @Override
    public String id() {
        return "rcd.inverterCable";
    }

    @Override
    public OnAssumption onAssumption() {
        return Rcds.ON_ASSUMPTION;
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Installation installation = studies.installation();
        Optional<Limit> limit = judging.limit("rcd.inverterCableTt");
        EarthingSystem earthing = installation.supply().earthingSystem();
        if (earthing != null && earthing != EarthingSystem.TT) return;
        for (Inverter inverter : installation.inverters()) {
            Judging.Draft draft = judging.at(inverter.id(), OperatingState.CONNECTED)
                    .on(installation.supply().fact("earthingSystem"));
            if (limit.isEmpty()) draft.openForLimit("rcd.inverterCableTt");
            else if (earthing == null)
                draft.by(limit.get()).openFor(installation.supply().fact("earthingSystem"));
            else if (!installation.gaps(inverter).isEmpty())
                draft.by(limit.get()).openFor(installation.gaps(inverter));
            else judge(installation, inverter, draft.by(limit.get()));
        }
    }

    private static void judge(Installation installation, Inverter inverter, Judging.Draft draft) {
        List<Fed> onWay = Rcds.onWay(installation, inverter, OperatingState.CONNECTED);
        if (onWay.isEmpty()) {
            draft.notMet("rcd.inverterCable.none", name(inverter.id()));
            return;
        }
        Fed holder = onWay.get(onWay.size() - 1);
        ResidualDevice device = Rcds.device(holder);
        RcdType demanded = inverter.residualType();
        Double largestA = inverter.residualRatedCurrentA();
        draft.on(holder.fact("rcd.type")).on(holder.fact("rcd.ratedResidualCurrentA"));
        if (device.type() == null) draft.openFor(holder.fact("rcd.type"));
        else if (demanded == null) draft.openFor(inverter.fact("residualType"));
        else if (device.type().compareTo(demanded) < 0)
            draft.notMet(
                    "rcd.inverterCable.type",
                    name(inverter.id()),
                    name(holder.id()),
                    word(device.type()),
                    word(demanded));
        else if (device.ratedResidualCurrentA() == null) draft.openFor(holder.fact("rcd.ratedResidualCurrentA"));
        else if (largestA != null && device.ratedResidualCurrentA() > largestA)
            draft.measure(device.ratedResidualCurrentA(), largestA, Unit.RESIDUAL_A)
                    .notMet(
                            "rcd.inverterCable.rated",
                            name(inverter.id()),
                            name(holder.id()),
                            amount(device.ratedResidualCurrentA(), Unit.RESIDUAL_A),
                            amount(largestA, Unit.RESIDUAL_A));
        else draft.met("rcd.inverterCable.met", name(inverter.id()), name(holder.id()));
    }
}
