package tideover.engine.network;

import tideover.engine.rules.Verification;

/**
 * Ampacity of a conductor as the table prints it, at the table's own conditions.
 *
 * @param currentA     continuous current-carrying capacity of each loaded conductor, r.m.s. [A]
 * @param source       document
 * @param place        table in it
 * @param verification how far the figure was compared
 */
public record Ampacity(double currentA, String source, String place, Verification verification) {
    public Ampacity {
        if (!(currentA > 0)) throw new IllegalArgumentException("currentA %s must be positive".formatted(currentA));
    }
}
