package tideover.engine.assessment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tideover.engine.installation.Installation;
import tideover.engine.installation.InstallationChecks;
import tideover.engine.installation.bus.BusChecks;
import tideover.engine.installation.bus.BusStudies;
import tideover.engine.installation.control.ControlChecks;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.installation.control.ControlWiring;
import tideover.engine.installation.storage.StorageChecks;
import tideover.engine.network.NetworkChecks;
import tideover.engine.network.NetworkStudies;
import tideover.engine.network.house.FlowStudies;
import tideover.engine.network.house.HouseChecks;
import tideover.engine.protection.ProtectionChecks;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.protection.Tables;
import tideover.engine.protection.overload.OverloadChecks;
import tideover.engine.protection.residual.ResidualChecks;
import tideover.engine.protection.selectivity.SelectivityChecks;
import tideover.engine.protection.selectivity.TimeCurrentPaths;
import tideover.engine.protection.shortcircuit.ShortCircuitChecks;
import tideover.engine.rules.Check;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Force;
import tideover.engine.rules.Judging;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.AcceptedAdvice;
import tideover.engine.site.Site;
import tideover.engine.starting.StartingChecks;
import tideover.engine.starting.StartingStudies;
import tideover.engine.wiring.hazard.WiringChecks;
import tideover.engine.wiring.hazard.WiringStudies;

/** Judges sites: resolve, study, check, sum up. Holds the tables and nothing of any site. */
public final class Assessor {

    private final Tables tables;

    /** @param tables tables of the standards */
    public Assessor(Tables tables) {
        this.tables = tables;
    }

    /** Judges a site by a rule book, slow studies included. */
    public Assessment assess(Site site, RuleBook rules) {
        return assess(site, rules, Judging.Calculations.NOT_KEPT, Depth.WHOLE);
    }

    /** Judges what needs no slow study: enough to answer an edit at once; the findings on wiring come later. */
    public Assessment assessAtOnce(Site site, RuleBook rules) {
        return assess(site, rules, Judging.Calculations.NOT_KEPT, Depth.AT_ONCE);
    }

    /**
     * Adds what {@link #assessAtOnce} left out: the same as {@link #assess} of the same site. The site is resolved anew, so
     * that this may run on a thread of its own while others read the assessment.
     */
    public Assessment withSlowFindings(Assessment atOnce) {
        Installation installation = Installation.of(atOnce.installation().site());
        Judging judging = judging(installation, atOnce.rules(), Judging.Calculations.NOT_KEPT);
        judge(WiringChecks.all(), new WiringStudies(installation), judging);
        List<Finding> findings = new ArrayList<>(atOnce.findings());
        findings.addAll(accepted(judging.findings(), installation.site().plan().accepted()));
        findings.sort((a, b) -> a.key().compareTo(b.key()));
        return new Assessment(atOnce.studies(), atOnce.rules(), findings, Verdict.of(findings), Map.of());
    }

    /**
     * The same findings without what was computed on the way to them, which takes most of the room: for whoever keeps
     * many. What is asked of the studies later is computed anew.
     */
    public Assessment withoutResults(Assessment judged) {
        return new Assessment(
                Studies.of(judged.installation(), judged.rules(), tables),
                judged.rules(),
                judged.findings(),
                judged.verdict(),
                judged.calculations());
    }

    /** Judges a site by a rule book and keeps the lines behind each finding. */
    public Assessment explain(Site site, RuleBook rules) {
        return assess(site, rules, Judging.Calculations.KEPT, Depth.WHOLE);
    }

    /** How much is judged. */
    private enum Depth {
        AT_ONCE,
        WHOLE
    }

    /** Every check there is, in the order in which they are best read. */
    public static List<Check<?>> checks() {
        List<Check<?>> all = new ArrayList<>();
        all.addAll(InstallationChecks.all());
        all.addAll(StorageChecks.all());
        all.addAll(ControlChecks.all());
        all.addAll(BusChecks.all());
        all.addAll(NetworkChecks.all());
        all.addAll(HouseChecks.all());
        all.addAll(ResidualChecks.all());
        all.addAll(ProtectionChecks.all());
        all.addAll(OverloadChecks.all());
        all.addAll(SelectivityChecks.all());
        all.addAll(StartingChecks.all());
        all.addAll(ShortCircuitChecks.all());
        all.addAll(WiringChecks.all());
        return List.copyOf(all);
    }

    /** What the checks ask of, for whoever wants to know more than they say. */
    public Studies studies(Site site, RuleBook rules) {
        return Studies.of(Installation.of(site), rules, tables);
    }

    /** What belongs on the time–current sheets of a judged site. */
    public TimeCurrentPaths curves(Assessment assessment) {
        return new TimeCurrentPaths(
                assessment.installation(), tables, assessment.studies().faults());
    }

    private Assessment assess(Site site, RuleBook rules, Judging.Calculations calculations, Depth depth) {
        Studies studies = studies(site, rules);
        Installation installation = studies.installation();
        Judging judging = judging(installation, rules, calculations);
        judge(InstallationChecks.all(), installation, judging);
        judge(StorageChecks.all(), installation, judging);
        ControlNet control = ControlNet.of(installation);
        judge(ControlChecks.all(), ControlWiring.of(installation, control), judging);
        judge(BusChecks.all(), BusStudies.of(control), judging);
        judge(NetworkChecks.all(), new NetworkStudies(installation, studies.demand()), judging);
        judge(HouseChecks.all(), new FlowStudies(installation, studies.flow()), judging);
        ProtectionStudies protection = new ProtectionStudies(installation, tables, studies.demand(), studies.faults());
        judge(ResidualChecks.all(), protection, judging);
        judge(ProtectionChecks.all(), protection, judging);
        judge(OverloadChecks.all(), protection, judging);
        judge(SelectivityChecks.all(), protection, judging);
        judge(StartingChecks.all(), new StartingStudies(installation, studies.demand(), studies.starts()), judging);
        judge(ShortCircuitChecks.all(), protection, judging);
        if (depth == Depth.WHOLE) judge(WiringChecks.all(), new WiringStudies(installation), judging);
        List<Finding> findings = accepted(judging.findings(), site.plan().accepted());
        findings.sort((a, b) -> a.key().compareTo(b.key()));
        return new Assessment(studies, rules, findings, Verdict.of(findings), judging.calculations());
    }

    private static Judging judging(Installation installation, RuleBook rules, Judging.Calculations calculations) {
        return new Judging(rules, installation.origins(), installation::assumedWiring, calculations);
    }

    private static <S> void judge(List<Check<S>> checks, S subject, Judging judging) {
        for (Check<S> check : checks) judging.apply(check, subject);
    }

    private static List<Finding> accepted(List<Finding> findings, List<AcceptedAdvice> accepted) {
        Map<String, String> reasons = new HashMap<>();
        for (AcceptedAdvice advice : accepted) reasons.put(advice.check() + " " + advice.place(), advice.reason());
        List<Finding> all = new ArrayList<>(findings.size());
        for (Finding finding : findings) {
            boolean isAdvice =
                    finding.force() == Force.ADVISED && !finding.outcome().isSettled();
            String reason = isAdvice
                    ? reasons.get(finding.key().check() + " " + finding.key().place())
                    : null;
            all.add(reason != null ? finding.withAccepted(reason) : finding);
        }
        return all;
    }
}
