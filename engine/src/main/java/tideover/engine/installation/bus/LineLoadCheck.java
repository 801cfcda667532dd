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

/** No more hangs on a line than a driver can feed; fewer where resistors hold it idle. */
final class LineLoadCheck implements Check<BusStudies> {

    private static final String LIMIT = "bus.load";
    private static final String PLAIN = "bus.largestUnitLoads";
    private static final String BIASED = "bus.largestUnitLoadsBiased";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(BusStudies bus, Judging judging) {
        for (BusLine line : bus.lines()) {
            if (line.ports().size() < 2) continue;
            boolean biased = line.ports().stream().anyMatch(port -> port.biasOhm() != null);
            Optional<Limit> limit = judging.limit(biased ? BIASED : PLAIN);
            Judging.Draft draft = judging.at(line.head().id());
            if (limit.isEmpty()) draft.openForLimit(biased ? BIASED : PLAIN);
            else judge(line, limit.get().requireNumber(), draft.by(limit.get()));
        }
    }

    private static void judge(BusLine line, double most, Judging.Draft draft) {
        for (BusPort port : line.ports()) draft.on(port.fact("unitLoadRatio"));
        List<FactId> missing = line.ports().stream()
                .filter(port -> port.unitLoadRatio() == null)
                .map(port -> port.fact("unitLoadRatio"))
                .toList();
        double unitLoads = line.load().unitLoadRatio();
        draft.measure(unitLoads, most, Unit.RATIO);
        if (unitLoads > most)
            draft.notMet(
                    "bus.load.above", Devices.of(line.head()), amount(unitLoads, Unit.RATIO), amount(most, Unit.RATIO));
        else if (!missing.isEmpty()) draft.openFor(missing);
        else
            draft.met("bus.load.met", Devices.of(line.head()), amount(unitLoads, Unit.RATIO), amount(most, Unit.RATIO));
    }
}
