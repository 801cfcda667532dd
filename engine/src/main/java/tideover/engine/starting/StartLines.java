package tideover.engine.starting;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.names;
import static tideover.engine.rules.PhraseArg.verbatim;
import static tideover.engine.rules.PhraseArg.word;

import java.util.List;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Trace;
import tideover.engine.rules.Unit;

/** The lines of calculations of starts. */
final class StartLines {

    private StartLines() {}

    static void motor(Motor motor, Trace trace) {
        trace.line(
                "calculation.start.motor",
                amount(motor.runningA(), Unit.A),
                amount(motor.startRatio(), Unit.RATIO),
                amount(motor.startA(), Unit.A),
                amount(motor.startPowerFactorRatio(), Unit.RATIO),
                amount(motor.timeS(), Unit.S));
    }

    static void peak(Peak peak, Trace trace) {
        PhraseArg[] numbers = {
            peak.line() == null ? verbatim("L1, L2, L3") : word(peak.line()),
            amount(peak.beforeA(), Unit.A),
            amount(peak.neededA(), Unit.A),
            amount(peak.allowedA(), Unit.A),
            amount(peak.timeS(), Unit.S)
        };
        if (Double.isInfinite(peak.timeS())) trace.line("calculation.start.onward", numbers);
        else trace.line("calculation.start.sum", numbers);
    }

    static void dips(List<Dips.Dip> dips, Trace trace) {
        for (Dips.Dip dip : dips)
            trace.line(
                    "calculation.start.dip",
                    name(dip.place()),
                    amount(dip.beforeV(), Unit.V),
                    amount(dip.duringV(), Unit.V));
    }

    static void steps(List<PickUp.Step> steps, Trace trace) {
        for (PickUp.Step step : steps)
            trace.line("calculation.start.step", amount(step.atS(), Unit.S), names(step.circuits()));
    }
}
