package tideover.engine.protection.residual;

import java.util.List;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;

/** The checks of residual current devices. */
public final class ResidualChecks {

    private static final List<Check<ProtectionStudies>> ALL = List.of(
            new PlaceCheck(),
            new AdditionalProtectionCheck(),
            new TypeCheck(),
            new BlindingCheck(),
            new FeedDirectionCheck(),
            new RatedCurrentCheck(),
            new TouchVoltageCheck(),
            new InverterCableCheck(),
            new SelectivityCheck());

    private ResidualChecks() {}

    /** In the order in which they are best read. */
    public static List<Check<ProtectionStudies>> all() {
        return ALL;
    }
}
