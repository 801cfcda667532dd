package tideover.engine.protection;

import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.network.Demand;

/**
 * What the checks of protection ask of: the installation and the studies of it.
 *
 * @param installation the netlist
 * @param tables       tables of the standards
 * @param demand       what flows; nothing where the rule book says nothing of coincidence
 * @param faults       what happens on a fault; nothing where the rule book does not cover fault protection
 */
public record ProtectionStudies(
        Installation installation,
        Tables tables,
        @Nullable Demand demand,
        @Nullable FaultCourses faults) {

    /** Faults in the whole network. */
    public static FaultCourses networkFaults(Installation installation, Tables tables, FaultAssumptions assumptions) {
        return new NetworkFaults(installation, tables, assumptions);
    }

    /** Faults by the simple method of one path. */
    public static FaultStudy pathFaults(Installation installation, Tables tables, FaultAssumptions assumptions) {
        return new PathFaults(installation, tables, assumptions);
    }
}
