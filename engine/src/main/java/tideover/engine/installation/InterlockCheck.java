package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;

import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.ByPass;
import tideover.engine.site.ByPassKind;

/** A by-pass never parallels grid and island source (IEC 60364-5-551, 551.6.1). */
final class InterlockCheck implements Check<Installation> {

    @Override
    public String id() {
        return "bypass.interlock";
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        Optional<Limit> limit = judging.limit("bypass.interlock");
        for (ByPass byPass : installation.byPasses()) {
            Judging.Draft draft = judging.at(byPass.id()).on(byPass.fact("kind"));
            if (limit.isEmpty()) draft.openForLimit("bypass.interlock");
            else if (byPass.kind() == null) draft.by(limit.get()).openFor(byPass.fact("kind"));
            else if (byPass.kind() == ByPassKind.PLAIN)
                draft.by(limit.get()).notMet("bypass.interlock.none", name(byPass.id()));
            else draft.by(limit.get()).met("bypass.interlock.met", name(byPass.id()));
        }
    }
}
