package tideover.engine.installation.bus;

import java.util.List;
import tideover.engine.rules.Check;

/** The checks of the bus. */
public final class BusChecks {

    private static final List<Check<BusStudies>> ALL = List.of(
            new ClientCheck(),
            new PolarityCheck(),
            new ReferenceCheck(),
            new TerminationCheck(),
            new BiasCheck(),
            new LineLoadCheck(),
            new LineLengthCheck(),
            new TwistedCheck(),
            new ScreenCheck(),
            new AddressCheck(),
            new FrameCheck(),
            new BudgetCheck());

    private BusChecks() {}

    /** In the order in which they are best read. */
    public static List<Check<BusStudies>> all() {
        return ALL;
    }
}
