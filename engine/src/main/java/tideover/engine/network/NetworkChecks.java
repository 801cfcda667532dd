package tideover.engine.network;

import java.util.List;
import tideover.engine.rules.Check;

/** The checks of currents: through the islanding switch, the meters and busbars, and of single loads in the island. */
public final class NetworkChecks {

    private static final List<Check<NetworkStudies>> ALL = List.of(
            new BackupFuseCheck(),
            new SwitchLoadCheck(),
            new SwitchFeedInCheck(),
            new ShortCircuitCheck(),
            new MeterRatingCheck(),
            new BusbarCheck(),
            new CareCheck());

    private NetworkChecks() {}

    /** In the order in which they are best read. */
    public static List<Check<NetworkStudies>> all() {
        return ALL;
    }
}
