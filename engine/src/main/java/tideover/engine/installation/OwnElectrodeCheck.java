package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tideover.engine.rules.Check;
import tideover.engine.rules.Force;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.EarthPlace;
import tideover.engine.site.Electrode;
import tideover.engine.site.FactId;
import tideover.engine.site.NeutralEarthLink;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.ThingId;

/** The island stands on an earth electrode of the house's own, where the rule book demands one. */
final class OwnElectrodeCheck implements Check<Installation> {

    /** Answers of the rule book. */
    private enum Demand {
        REQUIRED,
        ADVISED,
        NOT_NEEDED
    }

    @Override
    public String id() {
        return "link.electrode";
    }

    @Override
    public OnAssumption onAssumption() {
        return OnAssumption.STAYS_OPEN;
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        if (installation.formingInverters().isEmpty()) return;
        Judging.Draft draft = judging.at(ThingId.MAIN_EARTH);
        Optional<Limit> limit = judging.limit("link.electrode");
        if (limit.isEmpty()) {
            draft.openForLimit("link.electrode");
            return;
        }
        draft.by(limit.get());
        if (limit.get().is(Demand.ADVISED)) draft.force(Force.ADVISED);
        List<Electrode> electrodes = reached(installation);
        List<FactId> unplaced = electrodes.stream()
                .filter(electrode -> electrode.earth() == null)
                .map(electrode -> electrode.fact("earth"))
                .toList();
        if (limit.get().is(Demand.NOT_NEEDED)) {
            draft.notApplicable("link.electrode.notNeeded");
        } else if (electrodes.isEmpty()) {
            draft.notMet("link.electrode.none");
        } else if (!unplaced.isEmpty()) {
            draft.openFor(unplaced);
        } else {
            judge(electrodes, judging, draft);
        }
    }

    /** Those at the main earthing terminal, perhaps there, or at which a neutral is linked to earth. */
    private static List<Electrode> reached(Installation installation) {
        Set<ThingId> linked = new HashSet<>();
        for (NeutralEarthSwitch link : installation.neutralEarthSwitches())
            if (link.earthAt() != null) linked.add(link.earthAt());
        for (NeutralEarthLink link : installation.all(NeutralEarthLink.class))
            if (link.earthAt() != null) linked.add(link.earthAt());
        return installation.electrodes().stream()
                .filter(electrode -> electrode.earth() != EarthPlace.SEPARATE || linked.contains(electrode.id()))
                .toList();
    }

    private static void judge(List<Electrode> electrodes, Judging judging, Judging.Draft draft) {
        List<FactId> unmeasured = electrodes.stream()
                .filter(e -> e.resistanceOhm() == null)
                .map(e -> e.fact("resistanceOhm"))
                .toList();
        electrodes.forEach(e -> draft.on(e.fact("earth")).on(e.fact("resistanceOhm")));
        Electrode best = null;
        double bestOhm = Double.POSITIVE_INFINITY;
        for (Electrode electrode : electrodes)
            if (electrode.resistanceOhm() != null && electrode.resistanceOhm() < bestOhm) {
                best = electrode;
                bestOhm = electrode.resistanceOhm();
            }
        if (best == null) {
            draft.openFor(unmeasured);
            return;
        }
        Optional<Limit> largest = judging.limit("link.electrodeLargestOhm");
        if (largest.isPresent() && bestOhm > largest.get().requireNumber()) {
            draft.by(largest.get())
                    .measure(bestOhm, largest.get().requireNumber(), Unit.OHM)
                    .notMet(
                            "link.electrode.unstable",
                            name(best.id()),
                            amount(bestOhm, Unit.OHM),
                            amount(largest.get().requireNumber(), Unit.OHM));
        } else {
            draft.met("link.electrode.met", name(best.id()), amount(bestOhm, Unit.OHM));
        }
    }
}
