package tideover.engine.installation.bus;

import static tideover.engine.rules.PhraseArg.amount;

import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.BusPort;
import tideover.engine.site.FactId;

/** A line is terminated at its two ends and nowhere else. */
final class TerminationCheck implements Check<BusStudies> {

    private static final String LIMIT = "bus.termination";
    private static final String LEAST = "bus.terminationLeastOhm";
    private static final String LARGEST = "bus.terminationLargestOhm";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(BusStudies bus, Judging judging) {
        Optional<Limit> limit = judging.limit(LIMIT);
        Optional<Limit> least = judging.limit(LEAST);
        Optional<Limit> largest = judging.limit(LARGEST);
        for (BusLine line : bus.lines()) {
            // What is joined to nothing is the matter of the client.
            if (line.ports().size() < 2) continue;
            for (BusPort port : line.ports()) {
                Judging.Draft draft = judging.at(port.id()).on(port.fact("terminationOhm"));
                if (limit.isEmpty() || least.isEmpty() || largest.isEmpty()) draft.openForLimit(LIMIT);
                else
                    judge(
                            line,
                            port,
                            least.get().requireNumber(),
                            largest.get().requireNumber(),
                            draft.by(limit.get()));
            }
        }
    }

    private static void judge(BusLine line, BusPort port, double leastOhm, double largestOhm, Judging.Draft draft) {
        List<FactId> gaps = line.gaps();
        Double ohm = port.terminationOhm();
        int degree = line.degree(port);
        if (degree > 2) draft.notMet("bus.termination.branched", Devices.of(port));
        else if (degree == 2 && ohm == null) draft.met("bus.termination.within", Devices.of(port));
        else if (ohm == null && !gaps.isEmpty()) draft.openFor(gaps);
        else if (degree == 2) draft.notMet("bus.termination.extra", Devices.of(port));
        else if (ohm == null) draft.notMet("bus.termination.missing", Devices.of(port));
        else if (ohm < leastOhm || ohm > largestOhm)
            draft.notMet(
                    "bus.termination.value",
                    Devices.of(port),
                    amount(ohm, Unit.OHM),
                    amount(leastOhm, Unit.OHM),
                    amount(largestOhm, Unit.OHM));
        else draft.met("bus.termination.atEnd", Devices.of(port), amount(ohm, Unit.OHM));
    }
}
