package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Battery;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.Isolator;
import tideover.engine.site.IsolatorKind;
import tideover.engine.site.PvArray;
import tideover.engine.site.Thing;

/** For work there is a lockable isolation at every source (IEC 60364-5-551, 551.7); a contactor is none. */
final class LockableIsolationCheck implements Check<Installation> {

    @Override
    public String id() {
        return "isolation.lockable";
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        Optional<Limit> limit = judging.limit("isolation.lockable");
        List<Thing> sources = new ArrayList<>();
        sources.add(installation.supply());
        for (Thing thing : installation.things())
            if (thing instanceof Inverter || thing instanceof Battery || thing instanceof PvArray) sources.add(thing);
        for (Thing source : sources) {
            Judging.Draft draft = judging.at(source.id());
            if (limit.isEmpty()) draft.openForLimit("isolation.lockable");
            else judge(installation, source, draft.by(limit.get()), judging);
        }
    }

    private static void judge(Installation installation, Thing source, Judging.Draft draft, Judging judging) {
        List<FactId> unknown = new ArrayList<>(0);
        Isolator contactor = null;
        for (Isolator isolator : installation.all(Isolator.class)) {
            if (isolator.isolates() == null) unknown.add(isolator.fact("isolates"));
            if (!source.id().equals(isolator.isolates())) continue;
            draft.on(isolator.fact("isolates")).on(isolator.fact("lockable")).on(isolator.fact("kind"));
            if (isolator.kind() == IsolatorKind.CONTACTOR) contactor = isolator;
            else if (isolator.kind() == null) unknown.add(isolator.fact("kind"));
            else if (isolator.lockable() == null) unknown.add(isolator.fact("lockable"));
            else if (isolator.lockable()) {
                draft.met("isolation.lockable.met", name(source.id()), name(isolator.id()));
                return;
            }
        }
        if (!unknown.isEmpty()) draft.openFor(unknown);
        else if (contactor != null) {
            judging.limit("isolation.contactor").ifPresent(draft::by);
            draft.notMet("isolation.lockable.contactor", name(source.id()), name(contactor.id()));
        } else draft.notMet("isolation.lockable.none", name(source.id()));
    }
}
