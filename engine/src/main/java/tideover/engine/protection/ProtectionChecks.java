package tideover.engine.protection;

import java.util.List;
import tideover.engine.rules.Check;

/** The checks of fault protection; those of RCDs are in {@code residual}, those of overload in {@code overload}. */
public final class ProtectionChecks {

    private static final List<Check<ProtectionStudies>> ALL =
            List.of(new DisconnectionCheck(), new ProtectiveConductorCheck());

    private ProtectionChecks() {}

    /** In the order in which they are best read. */
    public static List<Check<ProtectionStudies>> all() {
        return ALL;
    }
}
