package tideover.bench;

/**
 * What a figure should be.
 *
 * @param side  on which side of the bound it should lie
 * @param bound in the unit of the benchmark
 */
record Aim(Side side, double bound) {

    /** Whether little or much is good. */
    enum Side {
        BELOW,
        ABOVE
    }

    static Aim below(double bound) {
        return new Aim(Side.BELOW, bound);
    }

    static Aim above(double bound) {
        return new Aim(Side.ABOVE, bound);
    }

    @Override
    public String toString() {
        String number = bound == Math.rint(bound) ? Long.toString((long) bound) : Double.toString(bound);
        return switch (side) {
            case BELOW -> "below " + number;
            case ABOVE -> "above " + number;
        };
    }
}
