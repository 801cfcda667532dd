package tideover.engine.starting;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.network.Demand;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.FactId;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/** While a motor that stays on starts, no board's voltage falls so far that contactors drop out, nor its own. */
final class StartDipCheck implements Check<StartingStudies> {

    private static final List<OperatingState> STATES =
            List.of(OperatingState.CONNECTED, OperatingState.ISLAND_GRID_DEAD);

    @Override
    public String id() {
        return "start.dip";
    }

    @Override
    public void judge(StartingStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit("start.dipRatio");
        Starts starts = studies.starts();
        Demand demand = studies.demand();
        for (Circuit circuit : Motors.thatStayOn(studies.installation())) {
            if (limit.isEmpty() || starts == null || demand == null) {
                judging.at(circuit.id()).openForLimit("start.dipRatio");
                continue;
            }
            Worst worst = worst(studies.installation(), starts, circuit);
            Judging.Draft draft = judging.at(circuit.id(), worst.state()).by(limit.get());
            draft.on(StartFacts.motor(circuit, demand));
            if (worst.state() == OperatingState.CONNECTED) draft.on(new FactId(ThingId.SUPPLY, "loopImpedanceOhm"));
            judge(starts, circuit, worst, limit.get().requireNumber(), draft, judging);
        }
    }

    /** The state in which it dips most, and what is known of it. */
    private record Worst(OperatingState state, Dips dips) {
        double dipRatio() {
            if (dips instanceof Dips.Collapsed) return Double.POSITIVE_INFINITY;
            if (dips instanceof Dips.Solved solved && !solved.all().isEmpty())
                return solved.all().get(0).ratio();
            return Double.NEGATIVE_INFINITY;
        }
    }

    private static Worst worst(Installation installation, Starts starts, Circuit circuit) {
        Worst worst = null;
        for (OperatingState state : STATES) {
            if (installation.in(state).findSource(circuit).isEmpty()) continue;
            Worst here = new Worst(state, starts.dips(circuit, state, Bound.WORST));
            if (worst == null || here.dipRatio() > worst.dipRatio()) worst = here;
        }
        if (worst == null) throw new IllegalArgumentException(circuit.id() + " is never fed");
        return worst;
    }

    private static void judge(
            Starts starts, Circuit circuit, Worst worst, double limitRatio, Judging.Draft draft, Judging judging) {
        if (worst.dips() instanceof Dips.Unknown unknown) {
            draft.openFor(unknown.facts());
            return;
        }
        if (worst.dips() instanceof Dips.Interrupted) {
            draft.notApplicable("start.dip.interrupted", name(circuit.id()));
            return;
        }
        List<FactId> missing = starts.missing(circuit);
        boolean isKept = worst.dipRatio() <= limitRatio;
        if (!isKept && !missing.isEmpty()) {
            Worst best = new Worst(worst.state(), starts.dips(circuit, worst.state(), Bound.BEST));
            if (best.dipRatio() <= limitRatio) {
                draft.openFor(missing);
                return;
            }
        }
        if (worst.dips() instanceof Dips.Collapsed collapsed) {
            if (judging.trace().isOn()) StartLines.motor(collapsed.motor(), judging.trace());
            draft.notMet("start.dip.collapsed", name(circuit.id()));
            return;
        }
        Dips.Solved solved = (Dips.Solved) worst.dips();
        if (solved.all().isEmpty()) {
            draft.notApplicable("start.dip.ramp", name(circuit.id()));
            return;
        }
        if (judging.trace().isOn()) {
            StartLines.motor(solved.motor(), judging.trace());
            StartLines.dips(solved.all(), judging.trace());
        }
        Dips.Dip dip = solved.all().get(0);
        double limitV = limitRatio * starts.nominalVoltageV();
        draft.measure(dip.beforeV() - dip.duringV(), limitV, Unit.V);
        PhraseArg[] said = {
            name(circuit.id()),
            name(dip.place()),
            amount(dip.beforeV(), Unit.V),
            amount(dip.duringV(), Unit.V),
            amount(limitV, Unit.V)
        };
        boolean isItsOwn = dip.place().equals(circuit.id());
        if (isKept && isItsOwn) draft.met("start.dip.own.met", said);
        else if (isKept) draft.met("start.dip.met", said);
        else if (isItsOwn) draft.notMet("start.dip.own.above", said);
        else draft.notMet("start.dip.above", said);
    }
}
