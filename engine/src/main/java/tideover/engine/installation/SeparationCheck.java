package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;

import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/** While islanded, no line of an island source reaches the grid (IEC 60364-8-82; IEC 60364-5-551, 551.6.1). */
final class SeparationCheck implements Check<Installation> {

    @Override
    public String id() {
        return "poles.lines";
    }

    @Override
    public OnAssumption onAssumption() {
        return OnAssumption.STAYS_OPEN;
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        Optional<Limit> limit = judging.limit("poles.lines");
        View island = installation.in(OperatingState.ISLAND_GRID_DEAD);
        for (Inverter source : installation.formingInverters()) {
            Judging.Draft draft =
                    judging.at(source.id(), OperatingState.ISLAND_GRID_DEAD).on(source.fact("fedFrom"));
            installation.islandingSwitches().forEach(device -> draft.on(device.fact("poles")));
            if (limit.isEmpty()) {
                draft.openForLimit("poles.lines");
                continue;
            }
            draft.by(limit.get());
            if (!installation.gaps(source).isEmpty()) {
                draft.openFor(installation.gaps(source));
            } else if (reachesGrid(island, source)) {
                draft.notMet("poles.lines.reachesGrid", name(source.id()));
            } else {
                draft.met("poles.lines.separated", name(source.id()));
            }
        }
    }

    private static boolean reachesGrid(View island, Inverter source) {
        for (Conductor line : new Conductor[] {Conductor.L1, Conductor.L2, Conductor.L3})
            if (island.sourcesAt(ThingId.SUPPLY, line).contains(source.id())) return true;
        return false;
    }
}
