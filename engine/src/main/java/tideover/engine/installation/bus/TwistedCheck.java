package tideover.engine.installation.bus;

import static tideover.engine.rules.PhraseArg.name;

import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.ControlCable;

/** The cores of a line are twisted in pairs. */
final class TwistedCheck implements Check<BusStudies> {

    private static final String LIMIT = "bus.twisted";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(BusStudies bus, Judging judging) {
        Optional<Limit> limit = judging.limit(LIMIT);
        for (BusLine line : bus.lines())
            for (ControlCable cable : line.cables()) {
                Judging.Draft draft = judging.at(cable.id()).on(cable.fact("twistedPairs"));
                if (limit.isEmpty()) draft.openForLimit(LIMIT);
                else if (cable.twistedPairs() == null) draft.by(limit.get()).openFor(cable.fact("twistedPairs"));
                else if (cable.twistedPairs()) draft.by(limit.get()).met("bus.twisted.met", name(cable.id()));
                else draft.by(limit.get()).notMet("bus.twisted.not", name(cable.id()));
            }
    }
}
