package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.FactId;
import tideover.engine.site.Meter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/** A meter that needs a measuring neutral has one, and from the side of the lines it measures, in every state. */
final class MeasuringNeutralCheck implements Check<Installation> {

    @Override
    public String id() {
        return "measuring.neutral";
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        Optional<Limit> limit = judging.limit("measuring.neutral");
        for (Meter meter : installation.meters()) {
            if (!installation.isTouched(meter)) continue;
            Boolean needs = meter.needsMeasuringNeutral();
            if (limit.isEmpty()) {
                judging.at(meter.id()).openForLimit("measuring.neutral");
            } else if (needs == null) {
                judging.at(meter.id()).by(limit.get()).openFor(meter.fact("needsMeasuringNeutral"));
            } else if (!needs) {
                judging.at(meter.id()).by(limit.get()).notApplicable("measuring.neutral.notNeeded", name(meter.id()));
            } else {
                judge(installation, meter, limit.get(), judging);
            }
        }
    }

    private static void judge(Installation installation, Meter meter, Limit limit, Judging judging) {
        ThingId bar = meter.measuringNeutralFrom();
        if (bar == null) {
            judging.at(meter.id()).by(limit).notMet("measuring.neutral.missing", name(meter.id()));
            return;
        }
        Set<FactId> missing = new LinkedHashSet<>(installation.gaps(meter));
        installation.findFed(bar).map(installation::gaps).ifPresent(missing::addAll);
        if (!missing.isEmpty()) {
            judging.at(meter.id()).by(limit).openFor(List.copyOf(missing));
            return;
        }
        for (OperatingState state : installation.states()) {
            View view = installation.in(state);
            ThingId source = view.findSource(meter).orElse(null);
            if (source == null || view.findNeutralPath(source, bar).isPresent()) continue;
            judging.at(meter.id(), state)
                    .by(limit)
                    .on(meter.fact("measuringNeutralFrom"))
                    .notMet("measuring.neutral.otherSide", name(meter.id()), name(bar), word(state));
            return;
        }
        judging.at(meter.id())
                .by(limit)
                .on(meter.fact("needsMeasuringNeutral"))
                .on(meter.fact("measuringNeutralFrom"))
                .met("measuring.neutral.met", name(meter.id()), name(bar));
    }
}
