package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;

import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.ByPass;
import tideover.engine.site.IslandingSwitch;

/** With the inverter dead the house can be put back on the grid by hand. */
final class ByPassCheck implements Check<Installation> {

    @Override
    public String id() {
        return "bypass.present";
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        Optional<Limit> limit = judging.limit("bypass.present");
        for (IslandingSwitch device : installation.islandingSwitches()) {
            Judging.Draft draft = judging.at(device.id());
            if (limit.isEmpty()) {
                draft.openForLimit("bypass.present");
                continue;
            }
            Optional<ByPass> byPass = installation.byPasses().stream()
                    .filter(b -> device.id().equals(b.leadsTo()) || leadsBehind(installation, b, device))
                    .findFirst();
            draft.by(limit.get());
            if (byPass.isPresent()) draft.met("bypass.present.met", name(device.id()), name(byPass.get().id()));
            else draft.notMet("bypass.present.none", name(device.id()));
        }
    }

    private static boolean leadsBehind(Installation installation, ByPass byPass, IslandingSwitch device) {
        return byPass.leadsTo() != null && installation.wayFromSupply(byPass.leadsTo()).contains(device.id());
    }
}
