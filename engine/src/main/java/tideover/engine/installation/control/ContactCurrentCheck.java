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

/** A control contact switches no more than it bears, and no less than keeps it clean. */
final class ContactCurrentCheck implements Check<ControlWiring> {

    private static final String LARGEST = "control.contactCurrent";
    private static final String LEAST = "control.contactLeastCurrent";

    @Override
    public String id() {
        return LARGEST;
    }

    @Override
    public void judge(ControlWiring wiring, Judging judging) {
        for (ControlPort contact : wiring.net().controlPorts()) {
            if (contact.kind() != PortKind.OUTPUT && contact.kind() != PortKind.AUXILIARY_CONTACT) continue;
            List<Drive> through = wiring.loads().through(contact.id());
            if (!through.isEmpty()) judge(contact, through, judging);
        }
    }

    private static void judge(ControlPort contact, List<Drive> through, Judging judging) {
        Judging.Draft draft = judging.at(contact.id());
        Optional<Limit> largest = judging.limit(LARGEST);
        Optional<Limit> least = judging.limit(LEAST);
        if (largest.isEmpty() || least.isEmpty()) {
            draft.openForLimit(LARGEST);
            return;
        }
        draft.by(largest.get()).on(contact.fact("currentA"));
        for (Drive drive : through) draft.on(drive.port().fact("currentA"));
        List<FactId> missing = new ArrayList<>(ControlLoads.missingCurrents(through));
        Double bearsA = contact.currentA();
        if (bearsA == null) missing.add(contact.fact("currentA"));
        if (!missing.isEmpty() || bearsA == null) {
            draft.openFor(missing);
            return;
        }
        double sumA = ControlLoads.sumA(through);
        double smallestA = through.stream()
                .mapToDouble(drive -> ControlLoads.sumA(List.of(drive)))
                .min()
                .orElse(0);
        Double leastA = contact.leastCurrentA();
        if (leastA != null) draft.on(contact.fact("leastCurrentA"));
        if (sumA > bearsA) {
            draft.measure(sumA, bearsA, Unit.A);
            draft.notMet(
                    "control.contactCurrent.above",
                    Meanings.terminals(contact),
                    Meanings.device(contact),
                    amount(sumA, Unit.A),
                    amount(bearsA, Unit.A));
        } else if (leastA != null && smallestA < leastA) {
            draft.by(least.get()).measure(smallestA, leastA, Unit.A);
            draft.notMet(
                    "control.contactCurrent.below",
                    Meanings.terminals(contact),
                    Meanings.device(contact),
                    amount(smallestA, Unit.A),
                    amount(leastA, Unit.A));
        } else {
            draft.measure(sumA, bearsA, Unit.A);
            draft.met(
                    "control.contactCurrent.met",
                    Meanings.terminals(contact),
                    Meanings.device(contact),
                    amount(sumA, Unit.A),
                    amount(bearsA, Unit.A));
        }
    }
}
