package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** A PEN is never switched: neither by a pole of its own nor behind a neutral that is (IEC 60364-5-54, 543.4). */
final class PenCheck implements Check<Installation> {

    @Override
    public String id() {
        return "poles.pen";
    }

    @Override
    public OnAssumption onAssumption() {
        return OnAssumption.STAYS_OPEN;
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        Optional<Limit> limit = judging.limit("poles.pen");
        Set<ThingId> switched = new LinkedHashSet<>();
        for (Edge edge : installation.edges())
            if (edge.part() == Edge.Part.CONTACT && edge.conductor() == Conductor.PEN)
                switched.add(edge.thing().id());
        for (Thing thing : installation.things()) {
            if (!(thing instanceof Fed fed) || fed.conductors() != null && !fed.has(Conductor.PEN)) continue;
            Judging.Draft draft = judging.at(fed.id()).on(fed.fact("conductors"));
            if (limit.isEmpty()) {
                draft.openForLimit("poles.pen");
                continue;
            }
            draft.by(limit.get());
            if (!installation.gaps(fed).isEmpty()) draft.openFor(installation.gaps(fed));
            else if (switched.contains(fed.id())) draft.notMet("poles.pen.switched", name(fed.id()));
            else if (isBehindContact(installation, fed)) draft.notMet("poles.pen.behind", name(fed.id()));
            else draft.met("poles.pen.solid", name(fed.id()));
        }
    }

    private static boolean isBehindContact(Installation installation, Fed fed) {
        return installation
                .in(OperatingState.CONNECTED)
                .findNeutralPath(ThingId.SUPPLY, fed.id())
                .map(path -> path.edges().stream().anyMatch(edge -> edge.part() == Edge.Part.CONTACT))
                .orElse(false);
    }
}
