package tideover.engine.installation.bus;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.ControlCable;
import tideover.engine.site.Screen;

/** The cable of a line has a screen, and the screen is earthed. */
final class ScreenCheck implements Check<BusStudies> {

    private static final String LIMIT = "bus.screen";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(BusStudies bus, Judging judging) {
        Optional<Limit> limit = judging.limit(LIMIT);
        for (BusLine line : bus.lines())
            for (ControlCable cable : line.cables()) {
                Judging.Draft draft = judging.at(cable.id()).on(cable.fact("screen"));
                Screen screen = cable.screen();
                if (limit.isEmpty()) draft.openForLimit(LIMIT);
                else if (screen == null) draft.by(limit.get()).openFor(cable.fact("screen"));
                else if (screen == Screen.ONE_END || screen == Screen.BOTH_ENDS)
                    draft.by(limit.get()).met("bus.screen.met", name(cable.id()), word(screen));
                else draft.by(limit.get()).notMet("bus.screen.not", name(cable.id()), word(screen));
            }
    }
}
