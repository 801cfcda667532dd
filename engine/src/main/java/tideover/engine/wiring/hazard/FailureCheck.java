package tideover.engine.wiring.hazard;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.FactId;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.mistake.Mistake;
import tideover.engine.wiring.mistake.MistakeKind;
import tideover.engine.wiring.model.Hazard;
import tideover.engine.wiring.model.HazardSearch.Exposure;
import tideover.engine.wiring.model.HazardSearch.Reached;

/**
 * A switching device that fails to move, or one of whose contacts is welded, and the loss of the control supply: the
 * inverter must then not form a voltage, or not return. The place is what fails.
 */
final class FailureCheck implements Check<WiringStudies> {

    private static final String LIMIT = "wiring.failure";

    /** An interrupted neutral is a fault of the contact itself: no control can prevent what it does. */
    private static final Set<Hazard> PREVENTABLE =
            EnumSet.of(Hazard.BACKFEED, Hazard.OUT_OF_STEP, Hazard.NO_LINK, Hazard.SEVERAL_LINKS);

    private record Found(Mistake failure, Hazard hazard) {}

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(WiringStudies studies, Judging judging) {
        if (!studies.isModelled()) return;
        Optional<Limit> limit = judging.limit(LIMIT);
        List<FactId> missing = studies.missing();
        Map<ThingId, Optional<Found>> places = new LinkedHashMap<>();
        for (Mistake failure : studies.failures()) {
            // A main contact that reports closed and does not conduct is found by measuring only.
            if (failure.kind() == MistakeKind.INTERRUPTED) continue;
            if (limit.isEmpty() || !missing.isEmpty()) places.put(failure.place(), Optional.empty());
            else places.merge(failure.place(), find(studies, failure, judging), (a, b) -> a.isPresent() ? a : b);
        }
        places.forEach((place, found) -> {
            Judging.Draft draft = judging.at(place);
            if (limit.isEmpty()) draft.openForLimit(LIMIT);
            else if (!missing.isEmpty()) draft.by(limit.get()).openFor(missing);
            else if (found.isEmpty()) draft.by(limit.get()).met("wiring.failure.safe", name(place));
            else
                draft.by(limit.get())
                        .notMet(
                                "wiring.failure.hazard",
                                name(place),
                                word(found.get().failure().kind()),
                                word(found.get().hazard()));
        });
    }

    /** The first hazard that this failure brings about and that lasts. */
    private static Optional<Found> find(WiringStudies studies, Mistake failure, Judging judging) {
        Reached reached = studies.with(failure);
        for (Hazard hazard : PREVENTABLE) {
            double allowedS =
                    judging.limit(hazard.limit()).map(Limit::requireNumber).orElse(0.0);
            double longestS = reached.find(hazard).map(Exposure::longestS).orElse(0.0);
            if (longestS > allowedS
                    && studies.withIdealControl()
                                    .find(hazard)
                                    .map(Exposure::longestS)
                                    .orElse(0.0)
                            <= allowedS) return Optional.of(new Found(failure, hazard));
        }
        return Optional.empty();
    }
}
