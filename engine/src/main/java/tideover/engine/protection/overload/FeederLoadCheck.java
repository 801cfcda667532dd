package tideover.engine.protection.overload;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.network.Demand;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Board;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Status;
import tideover.engine.site.Thing;

/**
 * An existing feeder that carries more than before, be it drawn or fed back, still carries it: I_b ≤ I_n ≤ I_z. What it
 * carried before is nobody's matter here.
 */
final class FeederLoadCheck implements Check<ProtectionStudies> {

    /** Less than this more is none: rounding of powers [A] (own choice). */
    private static final double MORE_A = 0.5;

    @Override
    public String id() {
        return "loading.feeder";
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit("loading.feeder");
        Installation installation = studies.installation();
        Demand demand = studies.demand();
        Demand before = null;
        for (Thing thing : installation.things()) {
            if (!(thing instanceof Board board)
                    || board.cable() == null
                    || installation.status(board.id()) != Status.EXISTING) continue;
            if (limit.isEmpty() || demand == null) {
                judging.at(board.id()).openForLimit("loading.feeder");
                continue;
            }
            if (before == null) before = demand.asFound();
            double beforeA = before.carriedA(board.id());
            double nowA = demand.carriedA(board.id());
            if (nowA > beforeA + MORE_A) judge(studies, board, beforeA, nowA, limit.get(), judging);
        }
    }

    private static void judge(
            ProtectionStudies studies, Board board, double beforeA, double nowA, Limit limit, Judging judging) {
        Optional<String> uncovered = Overload.uncovered(judging);
        if (uncovered.isPresent()) {
            judging.at(board.id()).openForLimit(uncovered.get());
            return;
        }
        Overload overload = Overload.ofCable(studies, board, judging);
        Judging.Draft draft = judging.at(board.id(), OperatingState.CONNECTED)
                .by(limit)
                .on(Overload.ampacityFacts(board))
                .on(overload.before()
                        .map(device -> List.of(device.ratedCurrent()))
                        .orElse(List.of()));
        Double ratedA = overload.ratedA();
        Double ampacityA = overload.ampacityA();
        if (ratedA == null || ampacityA == null) {
            draft.openFor(overload.missing());
            return;
        }
        double allowedA = Math.min(ratedA, ampacityA);
        draft.measure(nowA, allowedA, Unit.A);
        PhraseArg[] said = {name(board.id()), amount(beforeA, Unit.A), amount(nowA, Unit.A), amount(allowedA, Unit.A)};
        if (nowA <= allowedA) draft.met("loading.feeder.met", said);
        // By the same estimate it carried more than its device lets pass before, and did no harm: the device protects
        // it.
        else if (ratedA <= ampacityA && beforeA > ratedA) draft.met("loading.feeder.protected", said);
        else draft.notMet("loading.feeder.above", said);
    }
}
