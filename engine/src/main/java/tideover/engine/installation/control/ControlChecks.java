package tideover.engine.installation.control;

import java.util.List;
import tideover.engine.rules.Check;

/** The checks of control wiring. */
public final class ControlChecks {

    private static final List<Check<ControlWiring>> ALL = List.of(
            new RequestCheck(),
            new WiredInterlockCheck(),
            new PositionFeedbackCheck(),
            new StoppedCheck(),
            new GridSenseCheck(),
            new SettingsCheck(),
            new WireBreakCheck(),
            new PortNumberCheck(),
            new CoilVoltageCheck(),
            new ContactCurrentCheck(),
            new SupplyCurrentCheck());

    private ControlChecks() {}

    /** In the order in which they are best read. */
    public static List<Check<ControlWiring>> all() {
        return ALL;
    }
}
