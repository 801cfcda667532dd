package tideover.engine.installation.control;

import static tideover.engine.rules.PhraseArg.amount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.ControlPort;
import tideover.engine.site.FactId;
import tideover.engine.site.PortKind;

/** A control supply gives what everything it feeds draws together. */
final class SupplyCurrentCheck implements Check<ControlWiring> {

    private static final String LIMIT = "control.supplyCurrent";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(ControlWiring wiring, Judging judging) {
        Optional<Limit> limit = judging.limit(LIMIT);
        for (ControlPort supply : wiring.net().controlPorts(PortKind.SUPPLY)) {
            List<Drive> fed = wiring.loads().from(supply);
            if (fed.isEmpty()) continue;
            Judging.Draft draft = judging.at(supply.id());
            if (limit.isEmpty()) draft.openForLimit(LIMIT);
            else judge(supply, fed, draft.by(limit.get()));
        }
    }

    private static void judge(ControlPort supply, List<Drive> fed, Judging.Draft draft) {
        draft.on(supply.fact("currentA"));
        for (Drive drive : fed) draft.on(drive.port().fact("currentA"));
        List<FactId> missing = new ArrayList<>(ControlLoads.missingCurrents(fed));
        Double givesA = supply.currentA();
        if (givesA == null) missing.add(supply.fact("currentA"));
        if (!missing.isEmpty() || givesA == null) {
            draft.openFor(missing);
            return;
        }
        double sumA = ControlLoads.sumA(fed);
        draft.measure(sumA, givesA, Unit.A);
        if (sumA > givesA)
            draft.notMet(
                    "control.supplyCurrent.above",
                    Meanings.terminals(supply),
                    Meanings.device(supply),
                    amount(sumA, Unit.A),
                    amount(givesA, Unit.A));
        else
            draft.met(
                    "control.supplyCurrent.met",
                    Meanings.terminals(supply),
                    Meanings.device(supply),
                    amount(sumA, Unit.A),
                    amount(givesA, Unit.A));
    }
}
