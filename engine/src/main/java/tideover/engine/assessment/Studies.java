package tideover.engine.assessment;

import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.network.Coincidence;
import tideover.engine.network.Demand;
import tideover.engine.network.Impedances;
import tideover.engine.network.house.FlowStudy;
import tideover.engine.protection.FaultAssumptions;
import tideover.engine.protection.FaultCourses;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.protection.Tables;
import tideover.engine.rules.Limit;
import tideover.engine.rules.RuleBook;
import tideover.engine.starting.Starts;

/**
 * The studies of one site, by what its rule book lays down for them. They compute when asked.
 *
 * @param installation the netlist
 * @param demand       what is drawn and fed; nothing where the rule book says nothing of coincidence
 * @param flow         what flows in each state; nothing where demand or the temperature of conductors is missing
 * @param faults       what happens on a fault; nothing where the rule book does not cover fault protection
 * @param starts       how motors start; nothing where it is not known what flows
 */
public record Studies(
        Installation installation,
        @Nullable Demand demand,
        @Nullable FlowStudy flow,
        @Nullable FaultCourses faults,
        @Nullable Starts starts) {

    private static final double NOMINAL_VOLTAGE_V = 230;

    static Studies of(Installation installation, RuleBook rules, Tables tables) {
        Demand demand = demand(installation, rules);
        FlowStudy flow = demand == null ? null : flow(installation, demand, rules, tables);
        return new Studies(
                installation,
                demand,
                flow,
                faults(installation, rules, tables),
                demand == null || flow == null ? null : new Starts(installation, demand, flow, tables.starts()));
    }

    private static @Nullable Demand demand(Installation installation, RuleBook rules) {
        Double furtherSockets = number(rules, "switch.coincidence.furtherSockets");
        Double lighting = number(rules, "switch.coincidence.lighting");
        if (furtherSockets == null || lighting == null) return null;
        Double nominalVoltageV = installation.supply().nominalVoltageV();
        return new Demand(
                installation,
                new Coincidence(furtherSockets, lighting),
                nominalVoltageV == null ? NOMINAL_VOLTAGE_V : nominalVoltageV);
    }

    /** Conductors as warm as in the calculation of loops, their operating temperature. */
    private static @Nullable FlowStudy flow(Installation installation, Demand demand, RuleBook rules, Tables tables) {
        Double temperatureDegC = number(rules, "fault.loopTemperatureDegC");
        return temperatureDegC == null
                ? null
                : new FlowStudy(
                        installation, Impedances.inService(installation, tables.conductors(), temperatureDegC), demand);
    }

    private static @Nullable FaultCourses faults(Installation installation, RuleBook rules, Tables tables) {
        Double voltageFactor = number(rules, "fault.voltageFactor");
        Double temperatureDegC = number(rules, "fault.loopTemperatureDegC");
        Double measuredLoop = number(rules, "fault.measuredLoopFactor");
        Double safeVoltageV = number(rules, "fault.safeVoltageV");
        if (voltageFactor == null || temperatureDegC == null || safeVoltageV == null || measuredLoop == null)
            return null;
        Double largestFactor = number(rules, "shortCircuit.voltageFactor");
        Double coldDegC = number(rules, "shortCircuit.coldDegC");
        FaultAssumptions assumptions = new FaultAssumptions(
                voltageFactor,
                temperatureDegC,
                safeVoltageV,
                measuredLoop,
                largestFactor == null ? FaultAssumptions.LARGEST_VOLTAGE_FACTOR_RATIO : largestFactor,
                coldDegC == null ? FaultAssumptions.COLD_DEG_C : coldDegC);
        return ProtectionStudies.networkFaults(installation, tables, assumptions);
    }

    private static @Nullable Double number(RuleBook rules, String id) {
        return rules.find(id).map(Limit::requireNumber).orElse(null);
    }
}
