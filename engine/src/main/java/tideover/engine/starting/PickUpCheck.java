package tideover.engine.starting;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.names;

import java.util.List;
import java.util.Optional;
import tideover.engine.network.Demand;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/** When the island forms its voltage anew, its sources carry what then calls at once, or at least one after another. */
final class PickUpCheck implements Check<StartingStudies> {

    @Override
    public String id() {
        return "start.pickUp";
    }

    @Override
    public void judge(StartingStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit("start.pickUp");
        Starts starts = studies.starts();
        Demand demand = studies.demand();
        if (limit.isEmpty() || starts == null || demand == null) {
            for (Inverter inverter : studies.installation().formingInverters())
                judging.at(inverter.id(), OperatingState.ISLAND_GRID_DEAD).openForLimit("start.pickUp");
            return;
        }
        for (SourceGroup island : starts.islands()) {
            Judging.Draft draft = judging.at(island.sources().get(0), OperatingState.ISLAND_GRID_DEAD)
                    .by(limit.get())
                    .on(StartFacts.sources(island, studies.installation()));
            for (Circuit circuit : island.circuits())
                draft.on(circuit.fact("load.kind"))
                        .on(Motors.has(circuit) ? StartFacts.motor(circuit, demand) : demand.facts(circuit));
            judge(starts.pickUp(island), island, draft, judging);
        }
    }

    private static void judge(PickUp pickUp, SourceGroup island, Judging.Draft draft, Judging judging) {
        if (pickUp instanceof PickUp.Unknown unknown) {
            draft.openFor(unknown.facts());
        } else if (pickUp instanceof PickUp.AllAtOnce all) {
            Peak peak = measure(all.atOnce(), draft, judging);
            draft.met(
                    "start.pickUp.atOnce",
                    names(island.sources()),
                    amount(peak.neededA(), Unit.A),
                    amount(peak.allowedA(), Unit.A));
        } else if (pickUp instanceof PickUp.InSequence sequence) {
            Peak peak = measure(sequence.atOnce(), draft, judging);
            List<PickUp.Step> steps = sequence.steps();
            if (judging.trace().isOn()) StartLines.steps(steps, judging.trace());
            draft.met(
                    "start.pickUp.inSequence",
                    names(island.sources()),
                    amount(peak.neededA(), Unit.A),
                    amount(peak.allowedA(), Unit.A),
                    names(first(steps)));
        } else if (pickUp instanceof PickUp.NotPossible not) {
            Peak peak = measure(not.atOnce(), draft, judging);
            List<PickUp.Step> steps = not.steps();
            if (judging.trace().isOn()) StartLines.steps(steps, judging.trace());
            if (steps.size() > 1)
                draft.notMet(
                        "start.pickUp.above.inSequence",
                        names(island.sources()),
                        amount(peak.neededA(), Unit.A),
                        amount(peak.allowedA(), Unit.A),
                        names(not.heldBack()),
                        names(first(steps)));
            else
                draft.notMet(
                        "start.pickUp.above",
                        names(island.sources()),
                        amount(peak.neededA(), Unit.A),
                        amount(peak.allowedA(), Unit.A),
                        names(not.heldBack()));
        }
    }

    private static Peak measure(Peak peak, Judging.Draft draft, Judging judging) {
        if (judging.trace().isOn()) StartLines.peak(peak, judging.trace());
        draft.measure(peak.neededA(), peak.allowedA(), Unit.A);
        return peak;
    }

    /** What is switched on before the rest, in order. */
    private static List<ThingId> first(List<PickUp.Step> steps) {
        return steps.subList(0, steps.size() - 1).stream()
                .flatMap(step -> step.circuits().stream())
                .toList();
    }
}
