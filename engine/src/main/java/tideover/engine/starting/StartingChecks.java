package tideover.engine.starting;

import java.util.List;
import tideover.engine.rules.Check;

/** The checks of starts and of the moment when the voltage comes back. */
public final class StartingChecks {

    private static final List<Check<StartingStudies>> ALL =
            List.of(new StartCurrentCheck(), new StartDipCheck(), new PickUpCheck());

    private StartingChecks() {}

    /** In the order in which they are best read. */
    public static List<Check<StartingStudies>> all() {
        return ALL;
    }
}
