package tideover.engine.protection.shortcircuit;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.protection.FaultCourses;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Board;
import tideover.engine.site.FactId;
import tideover.engine.site.Status;

/**
 * A new or altered board bears the largest current at its busbar: its rated conditional short-circuit current, which holds
 * with the device its maker names before it, is not below (IEC 61439-3).
 */
final class BoardWithstandCheck implements Check<ProtectionStudies> {

    private static final String LIMIT = "shortCircuit.board";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit(LIMIT);
        Installation installation = studies.installation();
        for (Board board : installation.boards()) {
            if (installation.status(board.id()) == Status.EXISTING) continue;
            Judging.Draft draft = judging.at(board.id());
            if (limit.isEmpty() || studies.faults() == null) draft.openForLimit(LIMIT);
            else if (!installation.gaps(board).isEmpty()) draft.openFor(installation.gaps(board));
            else judge(installation, studies.faults(), board, draft.by(limit.get()), judging);
        }
    }

    private static void judge(
            Installation installation, FaultCourses faults, Board board, Judging.Draft draft, Judging judging) {
        Double conditionalA = board.conditionalShortCircuitCurrentA();
        Prospective prospective =
                Prospective.at(installation, faults, board.id(), conditionalA == null ? 0 : conditionalA);
        draft.on(prospective.facts()).on(board.fact("conditionalShortCircuitCurrentA"));
        List<FactId> missing = new ArrayList<>(prospective.missing());
        if (conditionalA == null) missing.add(board.fact("conditionalShortCircuitCurrentA"));
        if (conditionalA == null || !missing.isEmpty()) {
            draft.openFor(missing);
            return;
        }
        prospective.explain(judging.trace());
        draft.measure(prospective.currentA(), conditionalA, Unit.A);
        PhraseArg[] said = {name(board.id()), amount(prospective.currentA(), Unit.A), amount(conditionalA, Unit.A)};
        if (prospective.currentA() > conditionalA) draft.notMet("shortCircuit.board.above", said);
        else draft.met("shortCircuit.board.met", said);
    }
}
