package tideover.engine.wiring.hazard;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.Check;
import tideover.engine.wiring.model.Hazard;

/** The checks of this package, in the order in which they are best read. */
public final class WiringChecks {

    private static final List<Hazard> JUDGED =
            List.of(Hazard.BACKFEED, Hazard.OUT_OF_STEP, Hazard.NO_LINK, Hazard.SEVERAL_LINKS, Hazard.NEUTRAL_OPEN);

    private WiringChecks() {}

    public static List<Check<WiringStudies>> all() {
        List<Check<WiringStudies>> all = new ArrayList<>();
        for (Hazard hazard : JUDGED) all.add(new HazardCheck(hazard));
        all.add(new FailureCheck());
        return all;
    }
}
