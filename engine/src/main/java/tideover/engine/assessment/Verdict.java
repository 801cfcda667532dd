package tideover.engine.assessment;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Force;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.Verification;
import tideover.engine.site.FactId;

/**
 * The sum of all findings.
 *
 * @param outcome         NOT_MET if a binding finding is not met, else OPEN or NOT_CERTAIN if one is, else MET
 * @param counts          findings of each outcome
 * @param advice          findings of force ADVISED that are neither met nor not applicable nor accepted
 * @param onAssumptions   met findings that rest on a fact only assumed
 * @param assumptions     facts assumed under any finding
 * @param onUncompared    met or broken findings whose limit was not compared with the printed standard
 */
public record Verdict(
        Outcome outcome,
        Map<Outcome, Integer> counts,
        int advice,
        int onAssumptions,
        int assumptions,
        int onUncompared) {
    public Verdict {
        counts = Map.copyOf(counts);
    }

    /** Sums up findings. */
    public static Verdict of(List<Finding> findings) {
        Map<Outcome, Integer> counts = new EnumMap<>(Outcome.class);
        for (Outcome outcome : Outcome.values()) counts.put(outcome, 0);
        Set<FactId> assumed = new HashSet<>();
        Outcome worst = Outcome.MET;
        int advice = 0;
        int onAssumptions = 0;
        int onUncompared = 0;
        for (Finding finding : findings) {
            counts.merge(finding.outcome(), 1, Integer::sum);
            assumed.addAll(finding.assumptions());
            if (finding.isBlocking()) worst = worse(worst, finding.outcome());
            boolean judged = finding.outcome() != Outcome.NOT_APPLICABLE && finding.outcome() != Outcome.OPEN;
            if (finding.force() == Force.ADVISED && !finding.outcome().isSettled() && finding.accepted() == null)
                advice++;
            if (finding.outcome() == Outcome.MET && !finding.assumptions().isEmpty()) onAssumptions++;
            if (judged && finding.source() != null && finding.source().verification() != Verification.COMPARED)
                onUncompared++;
        }
        return new Verdict(worst, counts, advice, onAssumptions, assumed.size(), onUncompared);
    }

    private static Outcome worse(Outcome a, Outcome b) {
        return severity(a) >= severity(b) ? a : b;
    }

    private static int severity(Outcome outcome) {
        return switch (outcome) {
            case MET, NOT_APPLICABLE -> 0;
            case NOT_CERTAIN -> 1;
            case OPEN -> 2;
            case NOT_MET -> 3;
        };
    }
}
