package tideover.engine.rules;

import tideover.engine.site.FactId;

/** What an open finding waits for. */
public sealed interface Missing {

    /** Nobody has surveyed this fact. */
    record UnknownFact(FactId fact) implements Missing {}

    /** The fact is only assumed, and this check is never met on an assumption. */
    record AssumedFact(FactId fact) implements Missing {}

    /** The rule book does not say. */
    record UnknownLimit(String limit) implements Missing {}

    /** The grid operator decides and has not answered. */
    record OperatorAnswer(FactId fact) implements Missing {}
}
