package tideover.engine.network.house;

import java.util.List;
import tideover.engine.rules.Check;

/** The checks of voltages and of what each line carries. */
public final class HouseChecks {

    private static final List<Check<FlowStudies>> ALL = List.of(
            new SourceLoadCheck(), new UnbalanceCheck(), new VoltageUnbalanceCheck(), new DropCheck(), new RiseCheck());

    private HouseChecks() {}

    /** In the order in which they are best read. */
    public static List<Check<FlowStudies>> all() {
        return ALL;
    }
}
