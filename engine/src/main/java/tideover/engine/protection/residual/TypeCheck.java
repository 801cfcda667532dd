package tideover.engine.protection.residual;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.names;
import static tideover.engine.rules.PhraseArg.word;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Force;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Circuit;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.RcdType;
import tideover.engine.site.Status;
import tideover.engine.site.ThingId;

/** The RCD nearest to each circuit suits the residual currents of what is behind it (IEC 60364-5-53, 531.3.3). */
final class TypeCheck implements Check<ProtectionStudies> {

    /** Answers of the rule book. */
    private enum Demand {
        NOT_ALLOWED
    }

    @Override
    public String id() {
        return "rcd.type";
    }

    @Override
    public OnAssumption onAssumption() {
        return Rcds.ON_ASSUMPTION;
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Installation installation = studies.installation();
        Optional<Limit> limit = judging.limit("rcd.type");
        Map<Fed, List<Circuit>> nearest = new LinkedHashMap<>();
        for (Circuit circuit : installation.circuits()) {
            if (!installation.isTouched(circuit)) continue;
            List<Fed> onWay = Rcds.onWay(installation, circuit, OperatingState.CONNECTED);
            if (!onWay.isEmpty())
                nearest.computeIfAbsent(onWay.get(onWay.size() - 1), h -> new ArrayList<>())
                        .add(circuit);
        }
        nearest.forEach((holder, circuits) -> {
            if (limit.isEmpty()) judging.at(holder.id()).openForLimit("rcd.type");
            else judge(installation, holder, circuits, limit.get(), judging);
        });
    }

    private static void judge(
            Installation installation, Fed holder, List<Circuit> circuits, Limit limit, Judging judging) {
        Judging.Draft draft = judging.at(holder.id()).by(limit).on(holder.fact("rcd.type"));
        RcdType type = Rcds.device(holder).type();
        if (type == null) {
            draft.openFor(holder.fact("rcd.type"));
            return;
        }
        List<ThingId> tooMuch = new ArrayList<>(0);
        List<FactId> unknown = new ArrayList<>(0);
        RcdType most = RcdType.AC;
        for (Circuit circuit : circuits) {
            RcdType needed = Rcds.needed(circuit.load());
            if (needed == null && type != RcdType.B) unknown.add(circuit.fact("load.converter"));
            if (needed == null) continue;
            boolean byMaker = circuit.load() != null && circuit.load().residualType() != null;
            draft.on(circuit.fact(byMaker ? "load.residualType" : "load.converter"));
            if (needed.compareTo(type) > 0) tooMuch.add(circuit.id());
            if (needed.compareTo(most) > 0) most = needed;
        }
        Limit typeAc = judging.limit("rcd.typeAc").orElse(null);
        if (!tooMuch.isEmpty()) {
            draft.notMet("rcd.type.below", name(holder.id()), word(type), word(most), names(tooMuch));
        } else if (type == RcdType.AC && typeAc != null && typeAc.is(Demand.NOT_ALLOWED)) {
            draft.by(typeAc);
            // An old device before old circuits without electronics is no new work.
            if (!isNewWork(installation, holder, circuits)) draft.force(Force.ADVISED);
            draft.notMet("rcd.type.notAllowed", name(holder.id()), word(type));
        } else if (!unknown.isEmpty()) {
            draft.openFor(unknown);
        } else {
            draft.met("rcd.type.met", name(holder.id()), word(type));
        }
    }

    private static boolean isNewWork(Installation installation, Fed holder, List<Circuit> circuits) {
        if (installation.status(holder.id()) != Status.EXISTING) return true;
        for (Circuit circuit : circuits) if (installation.status(circuit.id()) != Status.EXISTING) return true;
        return false;
    }
}
