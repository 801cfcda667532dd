package tideover.engine.assessment;

import java.util.List;
import java.util.Map;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Finding;
import tideover.engine.rules.FindingKey;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.OperatingState;

/**
 * A judged site.
 *
 * @param studies      what was computed of the site
 * @param rules        limits it was judged by
 * @param findings     in the order of their keys
 * @param verdict      their sum
 * @param calculations the lines behind each finding; empty unless asked for
 */
public record Assessment(
        Studies studies,
        RuleBook rules,
        List<Finding> findings,
        Verdict verdict,
        Map<FindingKey, List<Phrase>> calculations) {
    public Assessment {
        findings = List.copyOf(findings);
        calculations = Map.copyOf(calculations);
    }

    /** The site, resolved. */
    public Installation installation() {
        return studies.installation();
    }

    /** What of it concerns one state: findings decided by that state and those for which the state does not matter. */
    public Assessment in(OperatingState state) {
        List<Finding> concerned = findings.stream()
                .filter(finding ->
                        finding.key().state() == null || finding.key().state() == state)
                .toList();
        return new Assessment(studies, rules, concerned, Verdict.of(concerned), calculations);
    }

    /** Whether every binding finding is met or not applicable. */
    public boolean requiredMet() {
        return findings.stream().noneMatch(Finding::isBlocking);
    }
}
