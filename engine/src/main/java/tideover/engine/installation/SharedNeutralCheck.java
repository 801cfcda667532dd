package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.names;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/**
 * Circuits that return over one neutral lie on different lines and on the same side of the islanding switch; otherwise it
 * carries double, or the current of a circuit that is off.
 */
final class SharedNeutralCheck implements Check<Installation> {

    /** Answers of the rule book. */
    private enum Demand {
        TOGETHER_ON_DIFFERENT_LINES,
        SEPARATE
    }

    @Override
    public String id() {
        return "neutral.shared";
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        Optional<Limit> limit = judging.limit("neutral.shared");
        for (Circuit circuit : installation.circuits()) {
            List<ThingId> partners = circuit.sharedNeutralWith();
            if (partners == null || !concerns(installation, circuit, partners)) continue;
            Judging.Draft draft = judging.at(circuit.id())
                    .on(circuit.fact("sharedNeutralWith"))
                    .on(circuit.fact("conductors"));
            if (limit.isEmpty()) draft.openForLimit("neutral.shared");
            else judge(installation, circuit, partners, limit.get(), draft.by(limit.get()));
        }
    }

    private static boolean concerns(Installation installation, Circuit circuit, List<ThingId> partners) {
        if (partners.isEmpty()) return false;
        if (installation.isTouched(circuit)) return true;
        for (ThingId id : partners)
            if (installation.findFed(id).map(installation::isTouched).orElse(false)) return true;
        return false;
    }

    private static void judge(
            Installation installation, Circuit circuit, List<ThingId> partners, Limit limit, Judging.Draft draft) {
        Set<FactId> missing = new LinkedHashSet<>(installation.gaps(circuit));
        List<ThingId> sameLine = new ArrayList<>();
        List<ThingId> otherSide = new ArrayList<>();
        View connected = installation.in(OperatingState.CONNECTED);
        List<Conductor> lines = connected.lines(circuit);
        for (ThingId id : partners) {
            if (!(installation.findFed(id).orElse(null) instanceof Circuit partner)) continue;
            missing.addAll(installation.gaps(partner));
            draft.on(partner.fact("conductors")).on(installation.assumedWiring(id));
            if (connected.lines(partner).stream().anyMatch(lines::contains)) sameLine.add(id);
            if (installation.staysOn(partner) != installation.staysOn(circuit)) otherSide.add(id);
        }
        if (!missing.isEmpty()) draft.openFor(List.copyOf(missing));
        else if (!otherSide.isEmpty()) draft.notMet("neutral.shared.split", name(circuit.id()), names(otherSide));
        else if (!sameLine.isEmpty()) draft.notMet("neutral.shared.sameLine", name(circuit.id()), names(sameLine));
        else if (limit.is(Demand.SEPARATE))
            draft.notMet("neutral.shared.notAllowed", name(circuit.id()), names(partners));
        else draft.met("neutral.shared.met", name(circuit.id()), names(partners));
    }
}
