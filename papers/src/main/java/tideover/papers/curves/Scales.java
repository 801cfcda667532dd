package tideover.papers.curves;

/** Where a current and a time lie on the sheet: double logarithmic, both scales with the same length for a decade [mm]. */
final class Scales {

    static final double SMALLEST_A = 10;
    static final double LARGEST_A = 20_000;
    static final double SHORTEST_S = 0.01;
    static final double LONGEST_S = 10_000;

    static final double LEFT = 26;
    static final double TOP = 46;
    static final double DECADE = 33.5;
    static final double RIGHT = LEFT + DECADE * Math.log10(LARGEST_A / SMALLEST_A);
    static final double BOTTOM = TOP + DECADE * Math.log10(LONGEST_S / SHORTEST_S);

    private Scales() {}

    /** Place of a current, from the left edge of the sheet [mm]; what lies beyond the scale is drawn at its end. */
    static double x(double currentA) {
        double inside = Math.max(SMALLEST_A, Math.min(LARGEST_A, currentA));
        return LEFT + DECADE * Math.log10(inside / SMALLEST_A);
    }

    /** Place of a time, from the upper edge of the sheet [mm]; what lies beyond the scale is drawn at its end. */
    static double y(double timeS) {
        if (timeS >= LONGEST_S) return TOP;
        double inside = Math.max(SHORTEST_S, timeS);
        return BOTTOM - DECADE * Math.log10(inside / SHORTEST_S);
    }

    /** The time at a height of the sheet [s]. */
    static double timeS(double y) {
        return SHORTEST_S * Math.pow(10, (BOTTOM - y) / DECADE);
    }

    /** Whether a current lies on the scale. */
    static boolean shows(double currentA) {
        return currentA >= SMALLEST_A && currentA <= LARGEST_A;
    }
}
