package tideover.engine.rules;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.FactId;

/**
 * What came of one check at one place. It has no wording; its calculation is made on request by its key.
 *
 * @param key         check, place, state
 * @param outcome     what came of it
 * @param force       how binding it is
 * @param measure     value against limit, where both are numbers
 * @param limit       id of the limit it was judged by; nothing where that is missing, or was a value of a table
 * @param source      where the limit stands; nothing where the limit itself is missing
 * @param facts       facts it rests on
 * @param assumptions those of the facts that are only assumed
 * @param missing     what an open finding waits for
 * @param phrase      what is said of it
 * @param accepted    the planner's reason for leaving advice as it is
 */
public record Finding(
        FindingKey key,
        Outcome outcome,
        Force force,
        @Nullable Measure measure,
        @Nullable String limit,
        @Nullable Source source,
        List<FactId> facts,
        List<FactId> assumptions,
        List<Missing> missing,
        Phrase phrase,
        @Nullable String accepted) {

    /**
     * A value against its limit, both in the same unit.
     *
     * @param value what is
     * @param limit what may be
     * @param unit  of both
     */
    public record Measure(double value, double limit, Unit unit) {}

    public Finding {
        facts = List.copyOf(facts);
        assumptions = List.copyOf(assumptions);
        missing = List.copyOf(missing);
        if ((outcome == Outcome.OPEN) == missing.isEmpty())
            throw new IllegalArgumentException("%s is %s and waits for %s".formatted(key, outcome, missing));
    }

    /** Whether it stands in the way of a verdict 'met': binding, and neither met nor not applicable. */
    public boolean isBlocking() {
        return force != Force.ADVISED && !outcome.isSettled();
    }

    /** A copy with the planner's reason for leaving it. */
    public Finding withAccepted(String reason) {
        return new Finding(key, outcome, force, measure, limit, source, facts, assumptions, missing, phrase, reason);
    }
}
