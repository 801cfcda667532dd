package tideover.engine.installation.control;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.ControlPort;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandSettings;
import tideover.engine.site.PortKind;
import tideover.engine.site.Thing;

/**
 * The inverter that leads waits long enough: for the grid to stay before it returns, and for each switch to have moved
 * before it locks out.
 */
final class SettingsCheck implements Check<ControlWiring> {

    private static final String OBSERVATION = "control.observationTimeS";

    @Override
    public String id() {
        return "control.settings";
    }

    @Override
    public void judge(ControlWiring wiring, Judging judging) {
        Inverter leader = wiring.findLeader().orElse(null);
        if (leader == null || !wiring.isStated()) return;
        Optional<Limit> observation = judging.limit(OBSERVATION);
        IslandSettings settings = wiring.findSettings().orElse(null);
        Judging.Draft draft = judging.at(leader.id());
        List<FactId> homeless = wiring.installation().all(IslandSettings.class).stream()
                .filter(stated -> stated.at() == null)
                .map(stated -> stated.fact("at"))
                .toList();
        if (observation.isEmpty()) draft.openForLimit(OBSERVATION);
        else if (settings == null && !homeless.isEmpty())
            draft.by(observation.get()).openFor(homeless);
        else if (settings == null) draft.by(observation.get()).notMet("control.settings.none", name(leader.id()));
        else judge(wiring, leader, settings, observation.get(), draft.by(observation.get()));
    }

    private static void judge(
            ControlWiring wiring, Inverter leader, IslandSettings settings, Limit observation, Judging.Draft draft) {
        draft.on(settings.fact("observationTimeS")).on(settings.fact("feedbackTimeS"));
        List<FactId> missing = new ArrayList<>(0);
        Double observationS = settings.observationTimeS();
        Double feedbackS = settings.feedbackTimeS();
        if (observationS == null) missing.add(settings.fact("observationTimeS"));
        if (feedbackS == null) missing.add(settings.fact("feedbackTimeS"));
        double longestS = 0;
        for (Thing device : wiring.devices())
            for (ControlPort command : wiring.commandsOf(device.id())) {
                if (command.operateTimeS() != null) longestS = Math.max(longestS, command.operateTimeS());
                else if (command.kind() == PortKind.COIL) missing.add(command.fact("operateTimeS"));
                if (command.releaseTimeS() != null) longestS = Math.max(longestS, command.releaseTimeS());
            }
        double shortestS = observation.requireNumber();
        if (observationS != null && observationS < shortestS) {
            draft.measure(observationS, shortestS, Unit.S);
            draft.notMet(
                    "control.settings.observation",
                    name(leader.id()),
                    amount(observationS, Unit.S),
                    amount(shortestS, Unit.S));
        } else if (feedbackS != null && feedbackS <= longestS) {
            draft.notMet(
                    "control.settings.feedback",
                    name(leader.id()),
                    amount(feedbackS, Unit.S),
                    amount(longestS, Unit.S));
        } else if (!missing.isEmpty() || observationS == null || feedbackS == null) {
            draft.openFor(missing);
        } else {
            draft.measure(observationS, shortestS, Unit.S);
            draft.met(
                    "control.settings.met",
                    name(leader.id()),
                    amount(observationS, Unit.S),
                    amount(shortestS, Unit.S),
                    amount(feedbackS, Unit.S));
        }
    }
}
