package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.ByPass;
import tideover.engine.site.FactId;
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
            List<FactId> missing = missing(installation.byPasses());
            draft.by(limit.get());
            byPass.ifPresent(found -> draft.on(found.fact("fedFrom")).on(found.fact("leadsTo")));
            if (!missing.isEmpty()) draft.openFor(missing);
            else if (byPass.isPresent())
                draft.met(
                        "bypass.present.met",
                        name(device.id()),
                        name(byPass.get().id()));
            else draft.notMet("bypass.present.none", name(device.id()));
        }
    }

    private static List<FactId> missing(List<ByPass> byPasses) {
        List<FactId> missing = new ArrayList<>(0);
        for (ByPass byPass : byPasses) {
            if (byPass.fedFrom() == null) missing.add(byPass.fact("fedFrom"));
            if (byPass.leadsTo() == null) missing.add(byPass.fact("leadsTo"));
        }
        return missing;
    }

    private static boolean leadsBehind(Installation installation, ByPass byPass, IslandingSwitch device) {
        return byPass.leadsTo() != null
                && installation.wayFromSupply(byPass.leadsTo()).contains(device.id());
    }
}
