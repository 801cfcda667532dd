package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.count;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.names;
import static tideover.engine.rules.PhraseArg.word;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.NeutralEarthLink;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/**
 * The law of the link: each separate live neutral has, in each state, exactly one connection to earth, the network's own
 * counted. The place is the source whose neutral it is.
 */
final class LinkCountCheck implements Check<Installation> {

    private record Worst(OperatingState state, NeutralGroup group) {}

    @Override
    public String id() {
        return "link.count";
    }

    @Override
    public OnAssumption onAssumption() {
        return OnAssumption.STAYS_OPEN;
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        Optional<Limit> limit = judging.limit("link.count");
        Map<ThingId, Worst> worst = new LinkedHashMap<>();
        for (OperatingState state : installation.states()) {
            // Without any voltage no neutral is live.
            if (installation.in(state).sources().isEmpty()) continue;
            for (NeutralGroup group : installation.in(state).neutralGroups()) {
                // A live neutral that no source holds is interrupted, another rule.
                if (!group.live() || !group.isHeld(installation.in(state))) continue;
                worst.merge(place(group), new Worst(state, group), LinkCountCheck::worse);
            }
        }
        worst.forEach((place, found) -> {
            boolean isOne = found.group().earthed().size() == 1;
            Judging.Draft draft = isOne ? judging.at(place) : judging.at(place, found.state());
            facts(installation, draft);
            if (limit.isEmpty()) draft.openForLimit("link.count");
            else conclude(draft.by(limit.get()), installation, place, found);
        });
    }

    /** While the grid's neutral is in it, a neutral is the grid's; else that of its first island source. */
    private static ThingId place(NeutralGroup group) {
        return group.sources().get(0);
    }

    private static Worst worse(Worst a, Worst b) {
        return distance(b) > distance(a) ? b : a;
    }

    /** None is worse than several: then nothing trips at all. */
    private static int distance(Worst found) {
        int links = found.group().earthed().size();
        return links == 0 ? Integer.MAX_VALUE : links - 1;
    }

    private static void facts(Installation installation, Judging.Draft draft) {
        draft.on(installation.supply().fact("earthingSystem"));
        for (Thing thing : installation.things()) {
            if (thing instanceof IslandingSwitch) draft.on(thing.fact("poles"));
            if (thing instanceof Fed && !(thing instanceof Circuit)) draft.on(installation.assumedWiring(thing.id()));
            if (thing instanceof NeutralEarthSwitch || thing instanceof NeutralEarthLink)
                draft.on(thing.fact("neutralAt"));
        }
    }

    /** What decides where neutrals are joined and earthed; a final circuit splits no PEN. */
    private static List<FactId> missing(Installation installation) {
        Set<FactId> missing = new LinkedHashSet<>();
        if (installation.supply().earthingSystem() == null)
            missing.add(installation.supply().fact("earthingSystem"));
        for (Thing thing : installation.things()) {
            if (thing instanceof Fed fed && !(fed instanceof Circuit)) missing.addAll(installation.gaps(fed));
            if (thing instanceof NeutralEarthSwitch link && link.neutralAt() == null)
                missing.add(link.fact("neutralAt"));
            if (thing instanceof NeutralEarthLink link && link.neutralAt() == null) missing.add(link.fact("neutralAt"));
        }
        return List.copyOf(missing);
    }

    private static void conclude(Judging.Draft draft, Installation installation, ThingId place, Worst found) {
        List<ThingId> earthed = found.group().earthed().stream().map(Thing::id).toList();
        draft.measure(earthed.size(), 1, Unit.COUNT);
        List<FactId> missing = missing(installation);
        if (!missing.isEmpty()) draft.openFor(missing);
        else if (earthed.isEmpty()) draft.notMet("link.count.none", name(place), word(found.state()));
        else if (earthed.size() > 1)
            draft.notMet("link.count.several", name(place), word(found.state()), count(earthed.size()), names(earthed));
        else draft.met("link.count.one", name(place), names(earthed));
    }
}
