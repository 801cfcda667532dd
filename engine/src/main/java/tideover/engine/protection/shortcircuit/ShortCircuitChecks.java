package tideover.engine.protection.shortcircuit;

import java.util.List;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;

/** The checks of short circuits and of what conductors bear in the moment of a fault. */
public final class ShortCircuitChecks {

    private static final List<Check<ProtectionStudies>> ALL = List.of(
            new BreakingCapacityCheck(),
            new BoardWithstandCheck(),
            new ConductorWithstandCheck(),
            new IslandSourceCheck(),
            new ProtectiveSectionCheck());

    private ShortCircuitChecks() {}

    /** In the order in which they are best read. */
    public static List<Check<ProtectionStudies>> all() {
        return ALL;
    }
}
