package tideover.engine.network;

/**
 * Current in a neutral.
 *
 * @param unbalanceA what the lines leave of the fundamental, r.m.s. [A]
 * @param thirdA     third harmonics of all lines, r.m.s. [A]
 */
public record NeutralCurrent(double unbalanceA, double thirdA) {

    /** Both together, r.m.s. [A]. */
    public double currentA() {
        return Math.hypot(unbalanceA, thirdA);
    }
}
