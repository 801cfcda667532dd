package tideover.engine.protection.shortcircuit;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.network.Upstream;
import tideover.engine.protection.FaultCourses;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Fed;
import tideover.engine.site.Status;
import tideover.engine.site.Thing;

/**
 * An overcurrent device breaks the largest current where it stands, or a fuse before it backs it up as its maker allows
 * (434.5.1). An existing device is judged only where it was enough before inverters added to that current: nothing else in
 * island operation asks more of it.
 */
final class BreakingCapacityCheck implements Check<ProtectionStudies> {

    private static final String LIMIT = "shortCircuit.breakingCapacity";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit(LIMIT);
        Installation installation = studies.installation();
        FaultCourses faults = studies.faults();
        for (Thing thing : installation.things()) {
            if (!(thing instanceof Fed fed) || fed.protection() == null) continue;
            boolean existing = installation.status(fed.id()) == Status.EXISTING;
            if (limit.isEmpty() || faults == null) {
                if (!existing) judging.at(fed.id()).openForLimit(LIMIT);
            } else if (existing) {
                judgeExisting(installation, faults, fed, limit.get(), judging);
            } else if (!installation.gaps(fed).isEmpty()) {
                judging.at(fed.id()).openFor(installation.gaps(fed));
            } else {
                judge(breaking(installation, faults, fed), fed, limit.get(), judging);
            }
        }
    }

    private static Breaking breaking(Installation installation, FaultCourses faults, Fed fed) {
        return Breaking.of(
                installation, faults, Upstream.findAt(installation, fed.id()).orElseThrow());
    }

    private static void judge(Breaking breaking, Fed fed, Limit limit, Judging judging) {
        Double capacityA = breaking.device().device().breakingCapacityA();
        if (capacityA == null || breaking.ability() == Breaking.Ability.UNKNOWN)
            judging.at(fed.id()).by(limit).on(breaking.facts()).openFor(breaking.missing());
        else if (breaking.ability() == Breaking.Ability.TOO_LITTLE)
            draft(breaking, capacityA, limit, judging)
                    .notMet("shortCircuit.breakingCapacity.below", said(breaking, capacityA));
        else if (breaking.backup() == null)
            draft(breaking, capacityA, limit, judging)
                    .met("shortCircuit.breakingCapacity.met", said(breaking, capacityA));
        else
            draft(breaking, capacityA, limit, judging)
                    .met(
                            "shortCircuit.breakingCapacity.backedUp",
                            name(fed.id()),
                            amount(breaking.prospective().currentA(), Unit.A),
                            amount(capacityA, Unit.A),
                            name(breaking.backup().holder()));
    }

    private static void judgeExisting(
            Installation installation, FaultCourses faults, Fed fed, Limit limit, Judging judging) {
        if (!installation.gaps(fed).isEmpty()) return;
        Breaking breaking = breaking(installation, faults, fed);
        Double capacityA = breaking.device().device().breakingCapacityA();
        if (capacityA == null || breaking.ability() != Breaking.Ability.TOO_LITTLE) return;
        double beforeA =
                breaking.prospective().currentA() - breaking.prospective().addedA();
        if (beforeA <= capacityA)
            draft(breaking, capacityA, limit, judging)
                    .notMet("shortCircuit.breakingCapacity.raised", said(breaking, capacityA));
    }

    private static Judging.Draft draft(Breaking breaking, double capacityA, Limit limit, Judging judging) {
        breaking.prospective().explain(judging.trace());
        return judging.at(breaking.device().holder())
                .by(limit)
                .on(breaking.facts())
                .measure(breaking.prospective().currentA(), capacityA, Unit.A);
    }

    private static PhraseArg[] said(Breaking breaking, double capacityA) {
        return new PhraseArg[] {
            name(breaking.device().holder()),
            amount(breaking.prospective().currentA(), Unit.A),
            amount(capacityA, Unit.A)
        };
    }
}
