package tideover.engine.protection.residual;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.names;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import tideover.engine.installation.Installation;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Fed;
import tideover.engine.site.FeedDirection;
import tideover.engine.site.ThingId;

/** An RCD with a source behind it is fed from its load side too and must be made for it (IEC 61009-1, marking). */
final class FeedDirectionCheck implements Check<ProtectionStudies> {

    @Override
    public String id() {
        return "rcd.feedDirection";
    }

    @Override
    public OnAssumption onAssumption() {
        return Rcds.ON_ASSUMPTION;
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Installation installation = studies.installation();
        Optional<Limit> limit = judging.limit("rcd.feedDirection");
        for (Fed holder : Rcds.all(installation)) {
            Set<ThingId> sources = installation.sourcesBehind(holder.id());
            if (sources.isEmpty()) continue;
            Judging.Draft draft = judging.at(holder.id()).on(holder.fact("rcd.feedDirection"));
            FeedDirection direction = Rcds.device(holder).feedDirection();
            if (limit.isEmpty()) draft.openForLimit("rcd.feedDirection");
            else if (direction == null) draft.by(limit.get()).openFor(holder.fact("rcd.feedDirection"));
            else if (direction == FeedDirection.LINE_SIDE_ONLY)
                draft.by(limit.get())
                        .notMet("rcd.feedDirection.backwards", name(holder.id()), names(List.copyOf(sources)));
            else draft.by(limit.get()).met("rcd.feedDirection.met", name(holder.id()));
        }
    }
}
