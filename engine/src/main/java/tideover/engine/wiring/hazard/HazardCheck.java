package tideover.engine.wiring.hazard;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.ControlPort;
import tideover.engine.site.FactId;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.model.Hazard;
import tideover.engine.wiring.model.HazardSearch.Exposure;

/** One hazard over all states the healthy house can reach, and the ways between. */
final class HazardCheck implements Check<WiringStudies> {

    private final Hazard hazard;

    HazardCheck(Hazard hazard) {
        this.hazard = hazard;
    }

    @Override
    public String id() {
        String limit = hazard.limit();
        return limit.substring(0, limit.length() - 1);
    }

    @Override
    public void judge(WiringStudies studies, Judging judging) {
        if (!studies.isModelled()) return;
        IslandingSwitch place = studies.installation().islandingSwitches().get(0);
        Judging.Draft draft = judging.at(place.id());
        for (ControlPort port : studies.model().wiring().controlPorts())
            if (port.onMeans() != null) draft.on(port.fact("onMeans"));
        Optional<Limit> limit = judging.limit(hazard.limit());
        List<FactId> missing = studies.missing();
        if (limit.isEmpty()) draft.openForLimit(hazard.limit());
        else if (!missing.isEmpty()) draft.by(limit.get()).openFor(missing);
        else conclude(draft.by(limit.get()), studies, limit.get().requireNumber(), place.id());
    }

    private void conclude(Judging.Draft draft, WiringStudies studies, double limitS, ThingId place) {
        Optional<Exposure> found = studies.healthy().find(hazard);
        double longestS = found.map(Exposure::longestS).orElse(0.0);
        if (longestS > limitS && isOfOthers(studies, limitS)) return;
        if (Double.isFinite(longestS)) draft.measure(longestS, limitS, Unit.S);
        if (found.isEmpty()) draft.met("wiring.hazard.never", word(hazard));
        else if (longestS <= limitS)
            draft.met("wiring.hazard.brief", word(hazard), amount(longestS, Unit.S), word(last(found.get())));
        else if (Double.isInfinite(longestS))
            draft.notMet("wiring.hazard.stays", word(hazard), word(last(found.get())), name(place));
        else
            draft.notMet(
                    "wiring.hazard.reached",
                    word(hazard),
                    amount(longestS, Unit.S),
                    word(last(found.get())),
                    name(place));
    }

    /** What happens even with ideal control is a matter of lines, neutrals and links. */
    private boolean isOfOthers(WiringStudies studies, double limitS) {
        return studies.withIdealControl()
                .find(hazard)
                .filter(exposure -> exposure.longestS() > limitS)
                .isPresent();
    }

    private static Enum<?> last(Exposure exposure) {
        return exposure.happenings().isEmpty()
                ? exposure.phase()
                : exposure.happenings().get(exposure.happenings().size() - 1);
    }
}
