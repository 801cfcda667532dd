package tideover.engine.protection.residual;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.names;
import static tideover.engine.rules.PhraseArg.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.RcdType;
import tideover.engine.site.ThingId;

/** No RCD of type AC, A or F lies before what can pass smooth d.c. and so blind it (IEC 60364-5-53, 531.3). */
final class BlindingCheck implements Check<ProtectionStudies> {

    @Override
    public String id() {
        return "rcd.blinding";
    }

    @Override
    public OnAssumption onAssumption() {
        return Rcds.ON_ASSUMPTION;
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Installation installation = studies.installation();
        Optional<Limit> limit = judging.limit("rcd.blinding");
        for (Fed holder : Rcds.all(installation)) {
            // The device of a single circuit or inverter blinds no other: whether it suits is a matter of its type.
            if (holder instanceof Circuit || holder instanceof Inverter) continue;
            if (!Rcds.isTouched(installation, holder)) continue;
            Judging.Draft draft = judging.at(holder.id()).on(holder.fact("rcd.type"));
            if (limit.isEmpty()) draft.openForLimit("rcd.blinding");
            else judge(studies, holder, draft.by(limit.get()));
        }
    }

    private static void judge(ProtectionStudies studies, Fed holder, Judging.Draft draft) {
        List<ThingId> blinding = new ArrayList<>(0);
        List<FactId> unknown = new ArrayList<>(0);
        for (Circuit circuit : Rcds.circuitsBehind(studies.installation(), holder)) {
            RcdType needed = Rcds.needed(circuit.load());
            if (needed == null) unknown.add(circuit.fact("load.converter"));
            else if (needed == RcdType.B) blinding.add(circuit.id());
        }
        for (Inverter inverter : studies.installation().inverters()) {
            if (!studies.installation().isBehind(inverter, holder.id())) continue;
            if (inverter.residualType() == null) unknown.add(inverter.fact("residualType"));
            else if (inverter.residualType() == RcdType.B) blinding.add(inverter.id());
        }
        RcdType type = Rcds.device(holder).type();
        Double ratedA = Rcds.device(holder).ratedResidualCurrentA();
        if (type == RcdType.B || blinding.isEmpty() && unknown.isEmpty()) {
            draft.met("rcd.blinding.met", name(holder.id()));
        } else if (type == null) {
            draft.openFor(holder.fact("rcd.type"));
        } else if (!blinding.isEmpty()) {
            double toleratedA = studies.tables().rcdTypes().toleratedSmoothDcA(type, ratedA == null ? 0 : ratedA);
            draft.notMet(
                    "rcd.blinding.blinded",
                    name(holder.id()),
                    word(type),
                    amount(toleratedA, Unit.RESIDUAL_A),
                    names(blinding));
        } else {
            draft.openFor(unknown);
        }
    }
}
