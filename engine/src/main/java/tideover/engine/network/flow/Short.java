package tideover.engine.network.flow;

/**
 * A connection that a fault makes.
 *
 * @param from point
 * @param to   point
 * @param ohm  its resistance, 0 where bolted [Ω]
 */
public record Short(int from, int to, double ohm) {
    public Short {
        if (!(ohm >= 0 && Double.isFinite(ohm)))
            throw new IllegalArgumentException("ohm %s of a fault must be a number of 0 or more".formatted(ohm));
    }
}
