package tideover.engine.installation.storage;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Battery;
import tideover.engine.site.BatteryPlace;

/** A battery stands where a fire in it neither cuts off the way out nor surprises somebody asleep. */
final class BatteryPlaceCheck implements Check<Installation> {

    /** Answers of the rule book. */
    private enum Answer {
        ALLOWED,
        NOT_ALLOWED
    }

    @Override
    public String id() {
        return "battery.place";
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        for (Battery battery : installation.all(Battery.class)) {
            Judging.Draft draft = judging.at(battery.id()).on(battery.fact("place"));
            BatteryPlace place = battery.place();
            // The rule books name every place, so that an uncovered topic shows in any of them.
            String id = "battery.place." + (place == null ? BatteryPlace.ESCAPE_ROUTE : place);
            Optional<Limit> limit = judging.limit(id);
            if (limit.isEmpty()) draft.openForLimit(id);
            else if (place == null) draft.by(limit.get()).openFor(battery.fact("place"));
            else if (limit.get().is(Answer.NOT_ALLOWED))
                draft.by(limit.get()).notMet("battery.place.notAllowed", name(battery.id()), word(place));
            else draft.by(limit.get()).met("battery.place.met", name(battery.id()), word(place));
        }
    }
}
