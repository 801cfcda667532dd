package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;

import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Inverter;
import tideover.engine.site.NeutralEarthLink;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/**
 * Fault protection in the island does not rely on the earthed point of the network, unless the country keeps the neutral
 * through (IEC 60364-5-551, 551.4.3.2.1).
 */
final class NetworkEarthCheck implements Check<Installation> {

    /** Answers of the rule book. */
    private enum Demand {
        MAY,
        MAY_NOT
    }

    @Override
    public String id() {
        return "link.networkEarth";
    }

    @Override
    public OnAssumption onAssumption() {
        return OnAssumption.STAYS_OPEN;
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        View island = installation.in(OperatingState.ISLAND_GRID_DEAD);
        Optional<Limit> limit = judging.limit("link.networkEarthInIsland");
        for (Inverter source : installation.formingInverters()) {
            Judging.Draft draft =
                    judging.at(source.id()).on(installation.supply().fact("earthingSystem"));
            installation.islandingSwitches().forEach(device -> draft.on(device.fact("poles")));
            if (limit.isEmpty()) {
                draft.openForLimit("link.networkEarthInIsland");
                continue;
            }
            draft.by(limit.get());
            if (!installation.gaps(source).isEmpty()) {
                draft.openFor(installation.gaps(source));
                continue;
            }
            boolean relies = island.findNeutralGroup(source.id())
                    .map(group -> group.sources().contains(ThingId.SUPPLY) && !hasOwnEarth(installation, group))
                    .orElse(false);
            if (!relies) draft.met("link.networkEarth.own", name(source.id()));
            else if (limit.get().is(Demand.MAY)) draft.met("link.networkEarth.allowed", name(source.id()));
            else draft.notMet("link.networkEarth.relies", name(source.id()));
        }
    }

    /** With the neutral left through, a PEN split or link at an electrode of the house is an earth of its own. */
    private static boolean hasOwnEarth(Installation installation, NeutralGroup group) {
        boolean electrode = !installation.electrodes().isEmpty();
        boolean link = group.earthed().stream()
                .anyMatch(thing -> thing instanceof NeutralEarthLink || thing instanceof NeutralEarthSwitch);
        // A PEN is joined to the main earthing terminal wherever it is split; in TN-S the network alone joins the two.
        boolean split = installation.supply().earthingSystem() == EarthingSystem.TN_C_S
                || installation.supply().earthingSystem() == EarthingSystem.TN_C;
        return electrode && (link || split);
    }
}
