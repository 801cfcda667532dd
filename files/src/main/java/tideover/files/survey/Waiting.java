package tideover.files.survey;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Force;
import tideover.engine.rules.Missing;
import tideover.engine.site.FactId;

/** Which facts open findings wait for, and how much hangs on each. */
public final class Waiting {
    /** What binds counts as much as three pieces of advice. */
    private static final int BINDING = 3;

    private final Map<FactId, Integer> findings = new HashMap<>();
    private final Map<FactId, Integer> weights = new HashMap<>();

    public Waiting(List<Finding> all) {
        for (Finding finding : all) {
            Set<FactId> facts = new HashSet<>();
            for (Missing missing : finding.missing()) {
                if (missing instanceof Missing.UnknownFact unknown) facts.add(unknown.fact());
                if (missing instanceof Missing.AssumedFact assumed) facts.add(assumed.fact());
                if (missing instanceof Missing.OperatorAnswer answer) facts.add(answer.fact());
            }
            for (FactId fact : facts) {
                findings.merge(fact, 1, Integer::sum);
                weights.merge(fact, finding.force() == Force.ADVISED ? 1 : BINDING, Integer::sum);
            }
        }
    }

    /** The facts waited for. */
    public Set<FactId> facts() {
        return findings.keySet();
    }

    /** How many findings wait for a fact, or for a group of facts it belongs to. */
    public int findings(FactId fact) {
        return most(findings, fact);
    }

    /** How much hangs on a fact. */
    public int weight(FactId fact) {
        return most(weights, fact);
    }

    private static int most(Map<FactId, Integer> counts, FactId fact) {
        int most = counts.getOrDefault(fact, 0);
        for (int dot = fact.field().lastIndexOf('.');
                dot > 0;
                dot = fact.field().lastIndexOf('.', dot - 1)) {
            FactId group = new FactId(fact.thing(), fact.field().substring(0, dot));
            most = Math.max(most, counts.getOrDefault(group, 0));
        }
        return most;
    }
}
