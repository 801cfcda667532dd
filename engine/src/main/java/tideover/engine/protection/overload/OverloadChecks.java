package tideover.engine.protection.overload;

import java.util.List;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;

/** The checks of overload. */
public final class OverloadChecks {

    private static final List<Check<ProtectionStudies>> ALL = List.of(
            new DesignCurrentCheck(), new TrippingCurrentCheck(), new NeutralCurrentCheck(), new FeederLoadCheck());

    private OverloadChecks() {}

    /** In the order in which they are best read. */
    public static List<Check<ProtectionStudies>> all() {
        return ALL;
    }
}
