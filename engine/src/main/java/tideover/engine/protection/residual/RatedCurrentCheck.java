package tideover.engine.protection.residual;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.network.Upstream;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Thing;

/**
 * The rated current of an RCD is not below that of the overcurrent device before it, or, where the rule book allows, not
 * below the sum of those behind it on any line (IEC 60364-5-53, 536.4.3.2).
 */
final class RatedCurrentCheck implements Check<ProtectionStudies> {

    /** Answers of the rule book. */
    private enum Demand {
        UPSTREAM_DEVICE,
        UPSTREAM_OR_SUM
    }

    @Override
    public String id() {
        return "rcd.ratedCurrent";
    }

    @Override
    public OnAssumption onAssumption() {
        return Rcds.ON_ASSUMPTION;
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Installation installation = studies.installation();
        Optional<Limit> limit = judging.limit("rcd.ratedCurrent");
        for (Fed holder : Rcds.all(installation)) {
            Double ratedA = Rcds.device(holder).ratedCurrentA();
            boolean isRcbo = ratedA == null && holder.protection() != null;
            if (isRcbo || !Rcds.isTouched(installation, holder)) continue;
            Judging.Draft draft = judging.at(holder.id()).on(holder.fact("rcd.ratedCurrentA"));
            if (limit.isEmpty()) draft.openForLimit("rcd.ratedCurrent");
            else if (ratedA == null) draft.by(limit.get()).openFor(holder.fact("rcd.ratedCurrentA"));
            else judge(installation, holder, ratedA, limit.get(), draft.by(limit.get()));
        }
    }

    private static void judge(Installation installation, Fed holder, double ratedA, Limit limit, Judging.Draft draft) {
        Optional<Upstream> before = Upstream.find(installation, holder.id());
        Double beforeA = before.map(b -> b.device().ratedCurrentA()).orElse(null);
        if (beforeA != null && ratedA >= beforeA) {
            before.ifPresent(b -> draft.on(b.ratedCurrent()));
            draft.measure(beforeA, ratedA, Unit.A)
                    .met(
                            "rcd.ratedCurrent.upstream",
                            name(holder.id()),
                            amount(ratedA, Unit.A),
                            name(before.orElseThrow().holder()),
                            amount(beforeA, Unit.A));
            return;
        }
        double sumA = limit.is(Demand.UPSTREAM_OR_SUM) ? largestSumA(installation, holder) : Double.POSITIVE_INFINITY;
        if (ratedA >= sumA) {
            draft.measure(sumA, ratedA, Unit.A)
                    .met("rcd.ratedCurrent.sum", name(holder.id()), amount(ratedA, Unit.A), amount(sumA, Unit.A));
        } else if (beforeA == null) {
            draft.openFor(before.map(Upstream::ratedCurrent)
                    .orElse(installation.supply().fact("mainFuse.ratedCurrentA")));
        } else {
            draft.measure(beforeA, ratedA, Unit.A)
                    .notMet(
                            "rcd.ratedCurrent.below",
                            name(holder.id()),
                            amount(ratedA, Unit.A),
                            name(before.orElseThrow().holder()),
                            amount(beforeA, Unit.A));
        }
    }

    /** Rated currents of the next devices behind an RCD, added per line [A]; +infinity if one is not known. */
    private static double largestSumA(Installation installation, Fed holder) {
        List<Fed> behind = new ArrayList<>();
        for (Thing thing : installation.things())
            if (thing instanceof Fed fed && holder.id().equals(fed.fedFrom())) behind.add(fed);
        double largestA = 0;
        for (Conductor line : installation.lines(holder.id())) {
            double sumA = 0;
            for (Fed fed : behind) {
                if (!installation.lines(fed.id()).contains(line)) continue;
                Double nextA =
                        fed.protection() == null ? null : fed.protection().ratedCurrentA();
                if (nextA == null) return Double.POSITIVE_INFINITY;
                sumA += nextA;
            }
            largestA = Math.max(largestA, sumA);
        }
        return largestA;
    }
}
