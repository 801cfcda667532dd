package tideover.engine.wiring.hazard;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.Check;
import tideover.engine.wiring.model.Hazard;

/** The checks of this package, in the order in which they are best read. */
public final class WiringChecks {

    /** Neutrals interrupted or crossed come with positions that the checks of installation judge state by state. */
    private static final List<Hazard> JUDGED =
            List.of(Hazard.BACKFEED, Hazard.OUT_OF_STEP, Hazard.NO_LINK, Hazard.SEVERAL_LINKS);

    private WiringChecks() {}

    public static List<Check<WiringStudies>> all() {
        List<Check<WiringStudies>> all = new ArrayList<>();
        for (Hazard hazard : JUDGED) all.add(new HazardCheck(hazard));
        all.add(new FailureCheck());
        return all;
    }
}
