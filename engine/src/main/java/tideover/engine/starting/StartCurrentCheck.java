package tideover.engine.starting;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.names;

import java.util.Optional;
import tideover.engine.network.Demand;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Trace;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.OperatingState;

/** Each motor that stays on starts within the overload its island source gives for that long. */
final class StartCurrentCheck implements Check<StartingStudies> {

    @Override
    public String id() {
        return "start.current";
    }

    @Override
    public void judge(StartingStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit("start.current");
        Starts starts = studies.starts();
        Demand demand = studies.demand();
        for (Circuit circuit : Motors.thatStayOn(studies.installation())) {
            Judging.Draft draft = judging.at(circuit.id(), OperatingState.ISLAND_GRID_DEAD);
            if (limit.isEmpty() || starts == null || demand == null) {
                draft.openForLimit("start.current");
                continue;
            }
            SourceGroup island = starts.island(circuit);
            draft.by(limit.get())
                    .on(StartFacts.motor(circuit, demand))
                    .on(StartFacts.sources(island, studies.installation()));
            judge(starts.start(circuit), circuit, island, draft, judging.trace());
        }
    }

    private static void judge(Start start, Circuit circuit, SourceGroup island, Judging.Draft draft, Trace trace) {
        if (start instanceof Start.Unknown unknown) {
            draft.openFor(unknown.facts());
        } else if (start instanceof Start.Carried carried) {
            Motor motor = carried.motor();
            Peak peak = carried.peak();
            if (trace.isOn()) explain(motor, peak, trace);
            draft.measure(peak.neededA(), peak.allowedA(), Unit.A);
            if (motor.startsWithoutInrush())
                draft.met("start.current.ramp", name(circuit.id()), amount(motor.runningA(), Unit.A));
            else
                draft.met(
                        "start.current.met",
                        name(circuit.id()),
                        amount(motor.startA(), Unit.A),
                        names(island.sources()),
                        amount(peak.neededA(), Unit.A),
                        amount(peak.allowedA(), Unit.A),
                        amount(motor.timeS(), Unit.S));
        } else if (start instanceof Start.Exceeds exceeds) {
            Motor motor = exceeds.motor();
            Peak peak = exceeds.peak();
            if (trace.isOn()) explain(motor, peak, trace);
            draft.measure(peak.neededA(), peak.allowedA(), Unit.A);
            if (Double.isInfinite(peak.timeS()))
                draft.notMet(
                        "start.current.running",
                        name(circuit.id()),
                        names(island.sources()),
                        amount(peak.neededA(), Unit.A),
                        amount(peak.allowedA(), Unit.A));
            else
                draft.notMet(
                        "start.current.above",
                        name(circuit.id()),
                        amount(motor.startA(), Unit.A),
                        names(island.sources()),
                        amount(peak.neededA(), Unit.A),
                        amount(peak.allowedA(), Unit.A),
                        amount(motor.timeS(), Unit.S),
                        amount(exceeds.largest().startA(), Unit.A));
        }
    }

    private static void explain(Motor motor, Peak peak, Trace trace) {
        if (motor.startsWithoutInrush()) return;
        StartLines.motor(motor, trace);
        StartLines.peak(peak, trace);
    }
}
