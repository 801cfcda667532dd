package tideover.engine.installation.storage;

import java.util.List;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Check;

/** The checks of batteries and of what is coupled to them. */
public final class StorageChecks {

    private static final List<Check<Installation>> ALL = List.of(new CoupledPowerCheck(), new BatteryPlaceCheck());

    private StorageChecks() {}

    /** In the order in which they are best read. */
    public static List<Check<Installation>> all() {
        return ALL;
    }
}
