package tideover.engine.site;

/** One number for each of L1, L2 and L3; the unit stands in the name of the variable that holds it. */
public record PerLine(double l1, double l2, double l3) {

    public static final PerLine ZERO = new PerLine(0, 0, 0);

    public static PerLine of(double all) {
        return new PerLine(all, all, all);
    }

    /** The value of a line conductor. */
    public double of(Conductor line) {
        return switch (line) {
            case L1 -> l1;
            case L2 -> l2;
            case L3 -> l3;
            case N, PE, PEN -> throw new IllegalArgumentException(line + " is no line conductor");
        };
    }

    public PerLine plus(PerLine other) {
        return new PerLine(l1 + other.l1, l2 + other.l2, l3 + other.l3);
    }

    public double largest() {
        return Math.max(l1, Math.max(l2, l3));
    }

    public double sum() {
        return l1 + l2 + l3;
    }
}
