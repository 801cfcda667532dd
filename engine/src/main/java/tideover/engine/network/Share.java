package tideover.engine.network;

import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;

/**
 * What one circuit adds to the worst credible current on one line.
 *
 * @param circuit  which
 * @param line     on which line
 * @param currentA its own largest current [A]
 * @param ratio    share of it drawn at once with the others, 0 to 1
 * @param reason   why so much
 */
public record Share(Circuit circuit, Conductor line, double currentA, double ratio, Reason reason) {

    /** Why a circuit counts with its share. */
    public enum Reason {
        /** The largest current was logged in this house. */
        LOGGED,
        /** The largest of the socket circuits on this line: in full. */
        LARGEST_SOCKETS,
        /** Another socket circuit: the rule book's share. */
        FURTHER_SOCKETS,
        /** Lighting: the rule book's share. */
        LIGHTING,
        /** Car charger, heat pump, heater and all else: in full. */
        IN_FULL
    }

    /** What it adds [A]. */
    public double addedA() {
        return ratio * currentA;
    }
}
