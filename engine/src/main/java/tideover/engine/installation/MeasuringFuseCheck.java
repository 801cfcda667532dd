package tideover.engine.installation;

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
import tideover.engine.site.Meter;

/** The fuse of a measuring neutral is not above what its terminal bears. */
final class MeasuringFuseCheck implements Check<Installation> {

    @Override
    public String id() {
        return "measuring.neutralFuse";
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        Optional<Limit> limit = judging.limit("measuring.neutralFuse");
        for (Meter meter : installation.meters()) {
            if (meter.measuringNeutralFrom() == null || !installation.isTouched(meter)) continue;
            Judging.Draft draft = judging.at(meter.id());
            Double fuseA = meter.measuringNeutralFuseA();
            Double limitA = meter.measuringNeutralLimitA();
            if (limit.isEmpty()) {
                draft.openForLimit("measuring.neutralFuse");
                continue;
            }
            draft.by(limit.get()).on(meter.fact("measuringNeutralFuseA")).on(meter.fact("measuringNeutralLimitA"));
            if (fuseA == null || limitA == null) {
                List<FactId> missing = new ArrayList<>(2);
                if (fuseA == null) missing.add(meter.fact("measuringNeutralFuseA"));
                if (limitA == null) missing.add(meter.fact("measuringNeutralLimitA"));
                draft.openFor(missing);
            } else if (fuseA > limitA) {
                draft.measure(fuseA, limitA, Unit.A);
                draft.notMet(
                        "measuring.neutralFuse.above", name(meter.id()), amount(fuseA, Unit.A), amount(limitA, Unit.A));
            } else {
                draft.measure(fuseA, limitA, Unit.A);
                draft.met("measuring.neutralFuse.met", name(meter.id()), amount(fuseA, Unit.A), amount(limitA, Unit.A));
            }
        }
    }
}
