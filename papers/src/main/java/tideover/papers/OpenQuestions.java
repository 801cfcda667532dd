package tideover.papers;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Missing;
import tideover.engine.rules.Topic;
import tideover.engine.site.FactId;
import tideover.engine.site.FactSource;

/** What open findings wait for, grouped by how one gets it: one photo of the board may answer dozens. */
public final class OpenQuestions {

    /**
     * What one errand brings.
     *
     * @param source  the errand
     * @param facts   what it has to bring
     * @param answers number of open findings that wait for one of them
     */
    public record Errand(FactSource source, List<FactId> facts, int answers) {
        public Errand {
            facts = List.copyOf(facts);
        }
    }

    private final List<Errand> errands;
    private final List<String> limits;
    private final int openForLimits;

    private OpenQuestions(List<Errand> errands, Collection<String> limits, int openForLimits) {
        this.errands = List.copyOf(errands);
        this.limits = List.copyOf(limits);
        this.openForLimits = openForLimits;
    }

    /** What these findings wait for; those that are not open wait for nothing. */
    public static OpenQuestions of(List<Finding> findings, Wording wording) {
        Map<FactSource, Set<FactId>> facts = new EnumMap<>(FactSource.class);
        Map<FactSource, Integer> answers = new EnumMap<>(FactSource.class);
        Set<String> limits = new LinkedHashSet<>();
        int openForLimits = 0;
        for (Finding finding : findings) {
            Set<FactSource> sources = new LinkedHashSet<>();
            boolean limit = false;
            for (Missing missing : finding.missing()) {
                if (missing instanceof Missing.UnknownLimit unknown) {
                    limits.add(unknown.limit());
                    limit = true;
                    continue;
                }
                FactId fact = fact(missing);
                FactSource source =
                        missing instanceof Missing.OperatorAnswer ? FactSource.ASK_OPERATOR : wording.source(fact);
                sources.add(source);
                facts.computeIfAbsent(source, s -> new LinkedHashSet<>()).add(fact);
            }
            if (limit) openForLimits++;
            for (FactSource source : sources) answers.merge(source, 1, Integer::sum);
        }
        List<Errand> errands = new ArrayList<>();
        facts.forEach((source, wanted) ->
                errands.add(new Errand(source, List.copyOf(wanted), answers.getOrDefault(source, 0))));
        return new OpenQuestions(errands, limits, openForLimits);
    }

    private static FactId fact(Missing missing) {
        if (missing instanceof Missing.UnknownFact unknown) return unknown.fact();
        if (missing instanceof Missing.AssumedFact assumed) return assumed.fact();
        if (missing instanceof Missing.OperatorAnswer answer) return answer.fact();
        throw new IllegalArgumentException("a limit is no fact: " + missing);
    }

    /** The errands that bring what is missing. */
    public List<Errand> errands() {
        return errands;
    }

    /** Limits the rule book does not have. */
    public List<String> limits() {
        return limits;
    }

    /** What the rule book says nothing about, in the words of the trade. */
    public List<Topic> topics() {
        return limits.stream()
                .flatMap(limit -> Topic.findByLimit(limit).stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** Number of findings that are open because the rule book has no limit. */
    public int openForLimits() {
        return openForLimits;
    }
}
