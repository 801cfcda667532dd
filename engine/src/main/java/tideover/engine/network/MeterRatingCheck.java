package tideover.engine.network;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Meter;
import tideover.engine.site.MeterConnection;

/** A direct meter bears what the overcurrent device before it lets through. */
final class MeterRatingCheck implements Check<NetworkStudies> {

    @Override
    public String id() {
        return "measuring.rating";
    }

    @Override
    public void judge(NetworkStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit("measuring.directLargestA");
        for (Meter meter : studies.installation().meters()) {
            if (meter.connection() != MeterConnection.DIRECT
                    || !studies.installation().isTouched(meter)) continue;
            Judging.Draft draft = judging.at(meter.id()).on(meter.fact("ratedCurrentA"));
            Optional<Upstream> before = Upstream.find(studies.installation(), meter.id());
            Double beforeA = before.map(b -> b.device().ratedCurrentA()).orElse(null);
            before.ifPresent(b -> draft.on(b.ratedCurrent()));
            if (limit.isEmpty()) draft.openForLimit("measuring.directLargestA");
            else if (meter.ratedCurrentA() == null) draft.by(limit.get()).openFor(meter.fact("ratedCurrentA"));
            else if (beforeA == null)
                draft.by(limit.get())
                        .openFor(before.map(Upstream::ratedCurrent)
                                .orElse(studies.installation().supply().fact("mainFuse.ratedCurrentA")));
            else judge(meter.ratedCurrentA(), beforeA, meter, draft.by(limit.get()));
        }
    }

    private static void judge(double ratedA, double beforeA, Meter meter, Judging.Draft draft) {
        draft.measure(beforeA, ratedA, Unit.A);
        PhraseArg[] said = {name(meter.id()), amount(beforeA, Unit.A), amount(ratedA, Unit.A)};
        if (beforeA > ratedA) draft.notMet("measuring.rating.below", said);
        else draft.met("measuring.rating.met", said);
    }
}
