package tideover.engine.installation.bus;

import static tideover.engine.rules.PhraseArg.amount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.BusPort;
import tideover.engine.site.FactId;

/** A line is not longer than its rate allows. */
final class LineLengthCheck implements Check<BusStudies> {

    private static final String LIMIT = "bus.length";
    private static final String LENGTH = "bus.largestLengthM";
    private static final String PRODUCT = "bus.lengthTimesRate";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(BusStudies bus, Judging judging) {
        Optional<Limit> length = judging.limit(LENGTH);
        Optional<Limit> product = judging.limit(PRODUCT);
        for (BusLine line : bus.lines()) {
            if (line.ports().size() < 2) continue;
            Judging.Draft draft = judging.at(line.head().id());
            if (length.isEmpty() || product.isEmpty()) draft.openForLimit(LENGTH);
            else judge(line, length.get().requireNumber(), product.get().requireNumber(), draft.by(length.get()));
        }
    }

    private static void judge(BusLine line, double largestM, double product, Judging.Draft draft) {
        BusPort head = line.head();
        List<FactId> missing = new ArrayList<>(line.missingLengths());
        Integer rate = head.rateBitPerS();
        draft.on(head.fact("rateBitPerS"));
        line.cables().forEach(cable -> draft.on(cable.fact("lengthM")));
        if (rate == null || rate <= 0) missing.add(head.fact("rateBitPerS"));
        double lengthM = line.lengthM();
        double allowedM = rate == null || rate <= 0 ? largestM : Math.min(largestM, product / rate);
        draft.measure(lengthM, allowedM, Unit.M);
        if (lengthM > allowedM)
            draft.notMet("bus.length.above", Devices.of(head), amount(lengthM, Unit.M), amount(allowedM, Unit.M));
        else if (!missing.isEmpty()) draft.openFor(missing);
        else draft.met("bus.length.met", Devices.of(head), amount(lengthM, Unit.M), amount(allowedM, Unit.M));
    }
}
