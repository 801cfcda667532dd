package tideover.engine.starting;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.names;
import static tideover.engine.rules.PhraseArg.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.network.Demand;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.StartKind;
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
            if (judging.trace().isOn()) explainLargest(studies.installation(), starts, island, judging);
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

    /** What may still be bought: the largest direct start on each line of the sources, and of boards that dip before. */
    private static void explainLargest(Installation installation, Starts starts, SourceGroup island, Judging judging) {
        Optional<Limit> dip = judging.limit("start.dipRatio");
        if (dip.isEmpty() || !starts.isKnown(island)) return;
        View view = installation.in(OperatingState.ISLAND_GRID_DEAD);
        List<Fed> places = new ArrayList<>(installation.formingInverters());
        places.addAll(installation.boards());
        for (Fed place : places) {
            boolean isSource = island.sources().contains(place.id());
            for (Conductor line : view.lines(place)) {
                if (view.sourcesAt(place.id(), line).stream().noneMatch(island.sources()::contains)) continue;
                LargestStart largest = starts.largest(
                        place, List.of(line), StartKind.DIRECT, dip.get().requireNumber());
                if (isSource || largest.limitedBy() == LargestStart.LimitedBy.DIP)
                    judging.trace()
                            .line(
                                    "calculation.start.largest",
                                    name(place.id()),
                                    word(line),
                                    amount(largest.startA(), Unit.A),
                                    amount(largest.timeS(), Unit.S));
            }
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
