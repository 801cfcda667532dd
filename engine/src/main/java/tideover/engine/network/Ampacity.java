package tideover.engine.network;

import tideover.engine.rules.Source;

/**
 * Ampacity of a conductor as the table prints it, at the table's own conditions.
 *
 * @param currentA continuous current-carrying capacity of each loaded conductor, r.m.s. [A]
 * @param source   where it stands
 */
public record Ampacity(double currentA, Source source) {
    public Ampacity {
        if (!(currentA > 0)) throw new IllegalArgumentException("currentA %s must be positive".formatted(currentA));
    }
}
