package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.IslandingSwitch;

/** It is known where the islanding switch rests when its control supply is lost. */
final class RestPositionCheck implements Check<Installation> {

    @Override
    public String id() {
        return "switch.restPosition";
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        Optional<Limit> limit = judging.limit("switch.restPosition");
        for (IslandingSwitch device : installation.islandingSwitches()) {
            Judging.Draft draft = judging.at(device.id()).on(device.fact("restPosition"));
            if (limit.isEmpty()) draft.openForLimit("switch.restPosition");
            else if (device.restPosition() == null) draft.by(limit.get()).openFor(device.fact("restPosition"));
            else draft.by(limit.get()).met("switch.restPosition.met", name(device.id()), word(device.restPosition()));
        }
    }
}
