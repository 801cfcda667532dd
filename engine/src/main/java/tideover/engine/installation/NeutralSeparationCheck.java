package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import tideover.engine.rules.Check;
import tideover.engine.rules.Force;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Source;
import tideover.engine.rules.Stance;
import tideover.engine.rules.Topic;
import tideover.engine.rules.Verification;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.GridOperator;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.NeutralRule;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/**
 * How many poles have to be separated: whether the island's neutral is separated from the network's as country, earthing
 * system and grid operator demand. Where the law decides nobody is asked; where the operator decides, its answer counts.
 */
final class NeutralSeparationCheck implements Check<Installation> {

    @Override
    public String id() {
        return "poles.neutral";
    }

    @Override
    public OnAssumption onAssumption() {
        return OnAssumption.STAYS_OPEN;
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        for (IslandingSwitch device : installation.islandingSwitches()) judge(installation, device, judging);
    }

    private void judge(Installation installation, IslandingSwitch device, Judging judging) {
        EarthingSystem earthing = installation.supply().earthingSystem();
        GridOperator operator = installation.site().house().gridOperator();
        Judging.Draft draft = judging.at(device.id())
                .on(installation.supply().fact("earthingSystem"))
                .on(device.fact("poles"));
        if (earthing == null) {
            draft.openFor(installation.supply().fact("earthingSystem"));
            return;
        }
        String id = "poles.neutral." + earthing;
        Limit law = judging.limit(id).orElse(null);
        if (law != null) draft.by(law);
        boolean lawDecides = law != null && (law.is(NeutralRule.MUST) || law.is(NeutralRule.MUST_NOT));
        // What the law allows either way is the operator's to decide.
        boolean operatorDecides = law != null && (law.is(Stance.ASK_OPERATOR) || law.is(NeutralRule.MAY))
                || law == null && judging.rules().stance(Topic.POLES) == Stance.ASK_OPERATOR;
        NeutralRule answer = operator.neutralSeparation();
        if (!lawDecides && answer != null) {
            draft.on(operator.fact("neutralSeparation"))
                    .force(Force.OPERATOR)
                    .by(new Source(operatorName(operator), "", Verification.SEEN));
            judge(installation, device, draft, answer);
        } else if (operatorDecides) {
            draft.openForOperator(operator.fact("neutralSeparation"));
        } else if (law == null) {
            draft.openForLimit(id);
        } else {
            judge(installation, device, draft, law.is(NeutralRule.MUST) ? NeutralRule.MUST : NeutralRule.MUST_NOT);
        }
    }

    private static String operatorName(GridOperator operator) {
        return operator.designation() == null ? "grid operator" : operator.designation();
    }

    private static void judge(
            Installation installation, IslandingSwitch device, Judging.Draft draft, NeutralRule demanded) {
        if (!installation.gaps(device).isEmpty()) {
            draft.openFor(installation.gaps(device));
            return;
        }
        boolean separated = isSeparated(installation);
        String is = separated ? "separated" : "through";
        boolean kept = switch (demanded) {
            case MUST -> separated;
            case MAY -> true;
            case MUST_NOT -> !separated;
        };
        if (kept) draft.met("poles.neutral.met." + is, name(device.id()), word(demanded));
        else draft.notMet("poles.neutral.notMet." + is, name(device.id()), word(demanded));
    }

    /** Whether no island source shares its neutral with the network while islanded. */
    private static boolean isSeparated(Installation installation) {
        View island = installation.in(OperatingState.ISLAND_GRID_DEAD);
        for (ThingId source : island.sources())
            if (island.findNeutralGroup(source)
                    .map(group -> group.sources().contains(ThingId.SUPPLY))
                    .orElse(false)) return false;
        return true;
    }
}
