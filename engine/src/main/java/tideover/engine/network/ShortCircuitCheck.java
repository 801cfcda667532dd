package tideover.engine.network;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.FactId;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Supply;

/**
 * The prospective short-circuit current at the islanding switch is not above its conditional short-circuit current. The
 * current at the grid connection point is taken for it, which is the safe side.
 */
final class ShortCircuitCheck implements Check<NetworkStudies> {

    @Override
    public String id() {
        return "switch.shortCircuit";
    }

    @Override
    public void judge(NetworkStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit("switch.shortCircuit");
        for (IslandingSwitch device : studies.installation().islandingSwitches()) {
            Judging.Draft draft = judging.at(device.id());
            if (limit.isEmpty()) draft.openForLimit("switch.shortCircuit");
            else judge(studies.installation().supply(), device, draft.by(limit.get()));
        }
    }

    private static void judge(Supply supply, IslandingSwitch device, Judging.Draft draft) {
        draft.on(supply.fact("prospectiveCurrentA")).on(device.fact("conditionalShortCircuitCurrentA"));
        Double prospectiveA = supply.prospectiveCurrentA();
        Double conditionalA = device.conditionalShortCircuitCurrentA();
        if (prospectiveA == null || conditionalA == null) {
            List<FactId> missing = new ArrayList<>(2);
            if (prospectiveA == null) missing.add(supply.fact("prospectiveCurrentA"));
            if (conditionalA == null) missing.add(device.fact("conditionalShortCircuitCurrentA"));
            draft.openFor(missing);
            return;
        }
        draft.measure(prospectiveA, conditionalA, Unit.A);
        PhraseArg[] said = {name(device.id()), amount(prospectiveA, Unit.A), amount(conditionalA, Unit.A)};
        if (prospectiveA > conditionalA) draft.notMet("switch.shortCircuit.above", said);
        else draft.met("switch.shortCircuit.met", said);
    }
}
