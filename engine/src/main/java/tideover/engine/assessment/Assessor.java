package tideover.engine.assessment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.installation.InstallationChecks;
import tideover.engine.network.Coincidence;
import tideover.engine.network.Demand;
import tideover.engine.network.NetworkChecks;
import tideover.engine.network.NetworkStudies;
import tideover.engine.protection.FaultAssumptions;
import tideover.engine.protection.FaultCourses;
import tideover.engine.protection.ProtectionChecks;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.protection.Tables;
import tideover.engine.protection.residual.ResidualChecks;
import tideover.engine.rules.Check;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Force;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.AcceptedAdvice;
import tideover.engine.site.Site;

/** Judges sites: resolve, study, check, sum up. Holds the tables and nothing of any site. */
public final class Assessor {

    private static final double NOMINAL_VOLTAGE_V = 230;

    private final Tables tables;

    /** @param tables tables of the standards */
    public Assessor(Tables tables) {
        this.tables = tables;
    }

    /** Judges a site by a rule book. */
    public Assessment assess(Site site, RuleBook rules) {
        return assess(site, rules, Judging.Calculations.NOT_KEPT);
    }

    /** Judges a site by a rule book and keeps the lines behind each finding. */
    public Assessment explain(Site site, RuleBook rules) {
        return assess(site, rules, Judging.Calculations.KEPT);
    }

    private Assessment assess(Site site, RuleBook rules, Judging.Calculations calculations) {
        Installation installation = Installation.of(site);
        Demand demand = findDemand(installation, rules).orElse(null);
        FaultCourses faults = findFaults(installation, rules).orElse(null);
        Judging judging = new Judging(rules, installation.origins(), installation::assumedWiring, calculations);
        for (Check<Installation> check : InstallationChecks.all()) judging.apply(check, installation);
        NetworkStudies network = new NetworkStudies(installation, demand);
        for (Check<NetworkStudies> check : NetworkChecks.all()) judging.apply(check, network);
        ProtectionStudies protection = new ProtectionStudies(installation, tables, demand, faults);
        for (Check<ProtectionStudies> check : ResidualChecks.all()) judging.apply(check, protection);
        for (Check<ProtectionStudies> check : ProtectionChecks.all()) judging.apply(check, protection);
        List<Finding> findings = accepted(judging.findings(), site.plan().accepted());
        findings.sort((a, b) -> a.key().compareTo(b.key()));
        return new Assessment(installation, rules, findings, Verdict.of(findings), judging.calculations());
    }

    /** What flows can be computed only where the rule book says how much is drawn at once. */
    private static Optional<Demand> findDemand(Installation installation, RuleBook rules) {
        Double furtherSockets = number(rules, "switch.coincidence.furtherSockets");
        Double lighting = number(rules, "switch.coincidence.lighting");
        if (furtherSockets == null || lighting == null) return Optional.empty();
        Double nominalVoltageV = installation.supply().nominalVoltageV();
        return Optional.of(new Demand(
                installation,
                new Coincidence(furtherSockets, lighting),
                nominalVoltageV == null ? NOMINAL_VOLTAGE_V : nominalVoltageV));
    }

    /** Faults can be computed only where the rule book says by what voltage and temperature. */
    private Optional<FaultCourses> findFaults(Installation installation, RuleBook rules) {
        Double voltageFactor = number(rules, "fault.voltageFactor");
        Double temperatureDegC = number(rules, "fault.loopTemperatureDegC");
        Double measuredLoop = number(rules, "fault.measuredLoopFactor");
        Double safeVoltageV = number(rules, "fault.safeVoltageV");
        if (voltageFactor == null || temperatureDegC == null || safeVoltageV == null || measuredLoop == null)
            return Optional.empty();
        Double largestFactor = number(rules, "shortCircuit.voltageFactor");
        Double coldDegC = number(rules, "shortCircuit.coldDegC");
        FaultAssumptions assumptions = new FaultAssumptions(
                voltageFactor,
                temperatureDegC,
                safeVoltageV,
                measuredLoop,
                largestFactor == null ? FaultAssumptions.LARGEST_VOLTAGE_FACTOR_RATIO : largestFactor,
                coldDegC == null ? FaultAssumptions.COLD_DEG_C : coldDegC);
        return Optional.of(ProtectionStudies.networkFaults(installation, tables, assumptions));
    }

    private static @Nullable Double number(RuleBook rules, String id) {
        return rules.find(id).map(Limit::requireNumber).orElse(null);
    }

    private static List<Finding> accepted(List<Finding> findings, List<AcceptedAdvice> accepted) {
        Map<String, String> reasons = new HashMap<>();
        for (AcceptedAdvice advice : accepted) reasons.put(advice.check() + " " + advice.place(), advice.reason());
        List<Finding> all = new ArrayList<>(findings.size());
        for (Finding finding : findings) {
            String reason = reasons.isEmpty()
                    ? null
                    : reasons.get(finding.key().check() + " " + finding.key().place());
            boolean isAdvice =
                    finding.force() == Force.ADVISED && !finding.outcome().isSettled();
            all.add(reason != null && isAdvice ? finding.withAccepted(reason) : finding);
        }
        return all;
    }
}
