package tideover.engine.protection.residual;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Force;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.RcdType;
import tideover.engine.site.Status;
import tideover.engine.site.ThingId;

/** The RCD nearest to a circuit suits the residual currents of what it feeds (IEC 60364-5-53, 531.3.3). */
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
        View connected = installation.in(OperatingState.CONNECTED);
        for (Circuit circuit : installation.circuits()) {
            if (!installation.isTouched(circuit) || connected.liveLines(circuit).isEmpty()) continue;
            List<Fed> rcds = connected
                    .findLinePath(ThingId.SUPPLY, circuit.id(), connected.liveLines(circuit).get(0))
                    .map(path -> path.rcds())
                    .orElse(List.of());
            if (rcds.isEmpty()) continue;
            Fed nearest = rcds.get(rcds.size() - 1);
            if (limit.isEmpty()) judging.at(circuit.id()).openForLimit("rcd.type");
            else judge(installation, circuit, nearest, limit.get(), judging);
        }
    }

    private static void judge(Installation installation, Circuit circuit, Fed nearest, Limit limit, Judging judging) {
        Judging.Draft draft = judging.at(circuit.id()).by(limit).on(nearest.fact("rcd.type"));
        RcdType type = Rcds.device(nearest).type();
        if (type == null) {
            draft.openFor(nearest.fact("rcd.type"));
            return;
        }
        RcdType needed = Rcds.needed(circuit.load());
        if (needed == null) {
            if (type == RcdType.B) draft.met("rcd.type.met", name(circuit.id()), name(nearest.id()), word(type));
            else draft.openFor(circuit.fact("load.converter"));
            return;
        }
        draft.on(circuit.fact(circuit.load() != null && circuit.load().residualType() != null ? "load.residualType" : "load.converter"));
        Limit typeAc = judging.limit("rcd.typeAc").orElse(null);
        if (type.compareTo(needed) < 0) {
            draft.notMet("rcd.type.below", name(circuit.id()), name(nearest.id()), word(type), word(needed));
        } else if (type == RcdType.AC && typeAc != null && typeAc.is(Demand.NOT_ALLOWED)) {
            draft.by(typeAc);
            // An old device before old circuits without electronics is no new work.
            if (installation.status(circuit.id()) == Status.EXISTING) draft.force(Force.ADVISED);
            draft.notMet("rcd.type.notAllowed", name(circuit.id()), name(nearest.id()), word(type));
        } else {
            draft.met("rcd.type.met", name(circuit.id()), name(nearest.id()), word(type));
        }
    }
}
