package tideover.engine.installation.control;

import static tideover.engine.rules.PhraseArg.name;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.ControlPort;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandSettings;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.SignalMeaning;
import tideover.engine.site.ThingId;

/** While islanded the inverter that leads can see the grid come back. */
final class GridSenseCheck implements Check<ControlWiring> {

    private static final String LIMIT = "control.gridSense";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(ControlWiring wiring, Judging judging) {
        Inverter leader = wiring.findLeader().orElse(null);
        if (leader == null || !wiring.isStated()) return;
        Optional<Limit> limit = judging.limit(LIMIT);
        Judging.Draft draft = judging.at(leader.id());
        if (limit.isEmpty()) {
            draft.openForLimit(LIMIT);
            return;
        }
        draft.by(limit.get());
        IslandSettings settings = wiring.findSettings().orElse(null);
        ThingId meter = settings == null ? null : settings.gridMeter();
        if (settings != null && meter != null) judge(wiring, leader, meter, draft.on(settings.fact("gridMeter")));
        else judge(wiring, leader, draft);
    }

    /** By a meter it reads over a bus. */
    private static void judge(ControlWiring wiring, Inverter leader, ThingId meter, Judging.Draft draft) {
        Installation installation = wiring.installation();
        List<FactId> gaps = installation.findFed(meter).map(installation::gaps).orElse(List.of());
        List<FactId> ofBus = wiring.net().gapsOfBus();
        if (!gaps.isEmpty()) draft.openFor(gaps);
        else if (isBehindSwitch(installation, meter))
            draft.notMet("control.gridSense.islandSide", name(leader.id()), name(meter));
        else if (wiring.isOnOneBus(leader.id(), meter))
            draft.met("control.gridSense.meter", name(leader.id()), name(meter));
        else if (!ofBus.isEmpty()) draft.openFor(ofBus);
        else draft.notMet("control.gridSense.noBus", name(leader.id()), name(meter));
    }

    /** By an input, or at its own grid terminals where its own relay is the islanding switch. */
    private static void judge(ControlWiring wiring, Inverter leader, Judging.Draft draft) {
        List<ControlPort> inputs = wiring.inputs(Set.of(SignalMeaning.GRID_PRESENT));
        for (ControlPort input : inputs) {
            if (wiring.findDrive(input).isEmpty()) continue;
            draft.on(input.fact("onMeans"))
                    .met("control.gridSense.input", name(leader.id()), Meanings.terminals(input));
            return;
        }
        List<FactId> gaps = wiring.gaps();
        List<IslandingSwitch> switches = wiring.installation().islandingSwitches();
        if (!switches.isEmpty()
                && switches.stream().allMatch(device -> leader.id().equals(device.builtInto())))
            draft.met("control.gridSense.inside", name(leader.id()));
        else if (!gaps.isEmpty()) draft.openFor(gaps);
        else draft.notMet("control.gridSense.none", name(leader.id()));
    }

    private static boolean isBehindSwitch(Installation installation, ThingId meter) {
        List<ThingId> way = installation.wayFromSupply(meter);
        return installation.islandingSwitches().stream().anyMatch(device -> way.contains(device.id()));
    }
}
