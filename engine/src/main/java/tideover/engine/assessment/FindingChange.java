package tideover.engine.assessment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Finding;
import tideover.engine.rules.FindingKey;

/**
 * A finding with another outcome in one assessment than in another, such as of a house as planned and as built.
 *
 * @param before nothing where the check did not apply
 * @param after  nothing where the check does not apply any more
 */
public record FindingChange(
        FindingKey key, @Nullable Finding before, @Nullable Finding after) {

    /**
     * What differs between two assessments, in the order of the findings. That another state is the worst one is no
     * difference.
     */
    public static List<FindingChange> between(Assessment before, Assessment after) {
        Map<FindingKey, Finding> earlier = new LinkedHashMap<>();
        for (Finding finding : before.findings()) earlier.put(finding.key(), finding);
        List<Finding> unmatched = new ArrayList<>();
        List<FindingChange> changes = new ArrayList<>();
        for (Finding finding : after.findings()) {
            Finding same = earlier.remove(finding.key());
            if (same == null) unmatched.add(finding);
            else add(same, finding, changes);
        }
        for (Finding finding : unmatched) {
            FindingKey known = earlier.keySet().stream()
                    .filter(key -> key.check().equals(finding.key().check())
                            && key.place().equals(finding.key().place()))
                    .findFirst()
                    .orElse(null);
            add(known == null ? null : earlier.remove(known), finding, changes);
        }
        earlier.forEach((key, finding) -> changes.add(new FindingChange(key, finding, null)));
        changes.sort((a, b) -> a.key().compareTo(b.key()));
        return changes;
    }

    private static void add(@Nullable Finding before, Finding after, List<FindingChange> changes) {
        if (before == null || before.outcome() != after.outcome())
            changes.add(new FindingChange(after.key(), before, after));
    }
}
