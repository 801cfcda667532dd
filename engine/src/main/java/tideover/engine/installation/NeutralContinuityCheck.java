package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.OperatingState;

/** No neutral is open while its lines are live (IEC 60364-4-43, 431.3): up to 400 V would stand on single-phase loads. */
final class NeutralContinuityCheck implements Check<Installation> {

    @Override
    public String id() {
        return "neutral.continuity";
    }

    @Override
    public OnAssumption onAssumption() {
        return OnAssumption.STAYS_OPEN;
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        Optional<Limit> limit = judging.limit("neutral.continuity");
        for (Circuit circuit : installation.circuits()) {
            // Without a neutral only where somebody has looked.
            if (circuit.conductors() != null && !circuit.has(Conductor.N) && !circuit.has(Conductor.PEN)) continue;
            if (limit.isEmpty()) judging.at(circuit.id()).openForLimit("neutral.continuity");
            else if (!installation.gaps(circuit).isEmpty())
                judging.at(circuit.id()).by(limit.get()).openFor(installation.gaps(circuit));
            else judge(installation, circuit, limit.get(), judging);
        }
    }

    private static void judge(Installation installation, Circuit circuit, Limit limit, Judging judging) {
        for (OperatingState state : installation.states()) {
            View view = installation.in(state);
            if (view.liveLines(circuit).isEmpty()) continue;
            boolean open = view.findNeutralGroup(circuit.id())
                    .map(group -> !group.isHeld(view))
                    .orElse(true);
            if (!open) continue;
            judging.at(circuit.id(), state)
                    .by(limit)
                    .on(circuit.fact("conductors"))
                    .notMet("neutral.continuity.open", name(circuit.id()), word(state));
            return;
        }
        judging.at(circuit.id())
                .by(limit)
                .on(circuit.fact("conductors"))
                .met("neutral.continuity.met", name(circuit.id()));
    }
}
