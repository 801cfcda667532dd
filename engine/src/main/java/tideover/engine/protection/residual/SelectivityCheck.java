package tideover.engine.protection.residual;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.Fed;
import tideover.engine.site.RcdDelay;
import tideover.engine.site.ResidualDevice;

/** Of two RCDs in series the one before is of type S and rated three times the one behind (IEC 60364-5-53, 536.4.1.4). */
final class SelectivityCheck implements Check<ProtectionStudies> {

    @Override
    public String id() {
        return "rcd.selectivity";
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Installation installation = studies.installation();
        Optional<Limit> limit = judging.limit("rcd.selectivity.ratio");
        if (limit.isEmpty()) return;
        List<Fed> rcds = Rcds.all(installation);
        for (Fed before : rcds) {
            if (!Rcds.isTouched(installation, before)) continue;
            Fed largest = null;
            for (Fed behind : rcds)
                if (installation.isBehind(behind, before.id()) && (largest == null || ratedA(behind) > ratedA(largest)))
                    largest = behind;
            if (largest != null) judge(before, largest, limit.get(), judging);
        }
    }

    private static double ratedA(Fed holder) {
        Double ratedA = Rcds.device(holder).ratedResidualCurrentA();
        return ratedA == null ? Double.POSITIVE_INFINITY : ratedA;
    }

    private static void judge(Fed before, Fed behind, Limit limit, Judging judging) {
        ResidualDevice device = Rcds.device(before);
        Judging.Draft draft = judging.at(before.id())
                .by(limit)
                .on(before.fact("rcd.delay"))
                .on(before.fact("rcd.ratedResidualCurrentA"))
                .on(behind.fact("rcd.ratedResidualCurrentA"));
        if (device.delay() == null) draft.openFor(before.fact("rcd.delay"));
        else if (device.ratedResidualCurrentA() == null) draft.openFor(before.fact("rcd.ratedResidualCurrentA"));
        else if (ratedA(behind) == Double.POSITIVE_INFINITY) draft.openFor(behind.fact("rcd.ratedResidualCurrentA"));
        else if (device.delay() != RcdDelay.SELECTIVE)
            draft.notMet("rcd.selectivity.notDelayed", name(before.id()), name(behind.id()));
        else {
            double ratio = device.ratedResidualCurrentA() / ratedA(behind);
            draft.measure(ratio, limit.requireNumber(), Unit.RATIO);
            // Ratings are printed numbers: 0.3 over 0.1 counts as three.
            if (ratio < limit.requireNumber() - 1e-9)
                draft.notMet(
                        "rcd.selectivity.ratio",
                        name(before.id()),
                        name(behind.id()),
                        amount(ratio, Unit.RATIO),
                        amount(limit.requireNumber(), Unit.RATIO));
            else draft.met("rcd.selectivity.met", name(before.id()), name(behind.id()));
        }
    }
}
