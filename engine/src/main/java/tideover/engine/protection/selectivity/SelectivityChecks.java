package tideover.engine.protection.selectivity;

import java.util.List;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;

/** The checks of selectivity of overcurrent devices; that of RCDs is among the checks of these. */
public final class SelectivityChecks {

    private static final List<Check<ProtectionStudies>> ALL = List.of(new OvercurrentSelectivityCheck());

    private SelectivityChecks() {}

    /** In the order in which they are best read. */
    public static List<Check<ProtectionStudies>> all() {
        return ALL;
    }
}
