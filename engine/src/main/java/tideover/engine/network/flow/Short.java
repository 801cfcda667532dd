package tideover.engine.network.flow;

/**
 * A connection that a fault makes.
 *
 * @param from point
 * @param to   point
 * @param faultOhm its resistance, 0 where bolted [Ω]
 */
public record Short(int from, int to, double faultOhm) {
    public Short {
        if (!(faultOhm >= 0 && Double.isFinite(faultOhm)))
            throw new IllegalArgumentException("faultOhm %s must be a number of 0 or more".formatted(faultOhm));
    }
}
