package tideover.engine.rules;

/**
 * Where a limit or a table value stands.
 *
 * @param document     standard with edition, or what else says so
 * @param clause       clause or table in it; empty where there is none
 * @param verification how far it was compared
 */
public record Source(String document, String clause, Verification verification) {}
