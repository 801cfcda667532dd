package tideover.engine.network.flow;

/**
 * Results without the noise of solving, for whoever compares or prints them: two networks that differ in the order of
 * their parts only give the same.
 */
public final class Settled {

    /** What is smaller is noise: a billionth of an ampere or volt. */
    private static final double NOTHING = 1e-9;

    private Settled() {}

    /** The value to some ten figures; 0 where it is nothing but noise. */
    public static double of(double value) {
        if (Math.abs(value) < NOTHING) return 0;
        return Double.longBitsToDouble((Double.doubleToRawLongBits(value) + (1L << 19)) & -(1L << 20));
    }
}
