package tideover.engine.protection.overload;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.List;
import java.util.Optional;
import tideover.engine.network.Upstream;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.protection.TripCurve;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Fed;
import tideover.engine.site.Thing;

/** The device trips for certain at 1.45 times the ampacity: I_2 ≤ 1.45 I_z (IEC 60364-4-43, 433.1). */
final class TrippingCurrentCheck implements Check<ProtectionStudies> {

    @Override
    public String id() {
        return "overload.tripping";
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit("overload.tripping.ratio");
        if (limit.isEmpty() || Overload.uncovered(judging).isPresent()) return;
        for (Thing thing : studies.installation().things())
            if (thing instanceof Fed fed && Overload.concerns(studies.installation(), fed))
                judge(studies, fed, limit.get(), judging);
    }

    /** Silent where the first condition is broken or open: that finding says so. */
    private static void judge(ProtectionStudies studies, Fed fed, Limit limit, Judging judging) {
        Overload overload = Overload.ofCable(studies, fed, judging);
        Double ampacityA = overload.ampacityA();
        TripCurve curve = overload.before()
                .flatMap(before -> studies.tables().tripCurves().find(before.device()))
                .orElse(null);
        if (ampacityA == null || curve == null || curve.ratedCurrentA() > ampacityA) return;
        double trippingA = curve.conventionalTrippingCurrentA();
        double allowedA = limit.requireNumber() * ampacityA;
        Judging.Draft draft = judging.at(fed.id())
                .by(limit)
                .on(Overload.ampacityFacts(fed))
                .on(overload.before().map(Upstream::facts).orElse(List.of()))
                .measure(trippingA, allowedA, Unit.A);
        PhraseArg[] said = {name(fed.id()), amount(trippingA, Unit.A), amount(allowedA, Unit.A)};
        if (trippingA > allowedA) draft.notMet("overload.tripping.above", said);
        else draft.met("overload.tripping.met", said);
    }
}
