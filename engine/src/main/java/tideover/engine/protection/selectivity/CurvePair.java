package tideover.engine.protection.selectivity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import tideover.engine.protection.Guarantee;
import tideover.engine.protection.TripCurve;

/**
 * Two overcurrent devices in series by their bands of time and current.
 *
 * @param behind the one nearer to the fault
 * @param before the one nearer to the source
 */
public record CurvePair(TripCurve behind, TripCurve before) {

    /**
     * Currents at which the device behind has certainly opened before the one before it can.
     *
     * @param fromA smallest [A]
     * @param toA   largest [A]
     */
    public record Range(double fromA, double toA) {}

    /**
     * All ranges, smallest current first. "Within 0.1 s" of one device and "not within 0.1 s" of the other do not overlap,
     * so the time that ends one and begins the other counts.
     */
    public List<Range> certain() {
        List<Range> ranges = new ArrayList<>(3);
        List<Double> marks = List.copyOf(marks());
        for (int i = 1; i < marks.size(); i++) {
            Range part = between(marks.get(i - 1), marks.get(i)).orElse(null);
            if (part == null) continue;
            Range last = ranges.isEmpty() ? null : ranges.get(ranges.size() - 1);
            if (last != null && last.toA() == part.fromA())
                ranges.set(ranges.size() - 1, new Range(last.fromA(), part.toA()));
            else ranges.add(part);
        }
        return ranges;
    }

    /** Currents at which either band has a corner; in between both are straight on double logarithmic paper. */
    private TreeSet<Double> marks() {
        TreeSet<Double> marks = new TreeSet<>();
        for (TripCurve curve : new TripCurve[] {behind, before}) {
            marks.add(curve.ratedCurrentA());
            for (Guarantee guarantee : Guarantee.values())
                for (TripCurve.Point point : curve.points(guarantee)) marks.add(point.currentA());
        }
        return marks;
    }

    private Optional<Range> between(double fromA, double toA) {
        double left = margin(Math.nextUp(fromA));
        double right = margin(Math.nextDown(toA));
        if (left < 0 && right < 0) return Optional.empty();
        if (left >= 0 && right >= 0) return Optional.of(new Range(fromA, toA));
        double crossingA = fromA * Math.pow(toA / fromA, left / (left - right));
        return Optional.of(left >= 0 ? new Range(fromA, crossingA) : new Range(crossingA, toA));
    }

    /** Logarithm of the time the one before certainly waits over the time the one behind takes at most. */
    private double margin(double currentA) {
        double latestS = behind.latestS(currentA);
        double earliestS = before.earliestS(currentA);
        if (latestS == Double.POSITIVE_INFINITY || earliestS == 0) return -Double.MAX_VALUE;
        return earliestS == Double.POSITIVE_INFINITY ? Double.MAX_VALUE : Math.log(earliestS / latestS);
    }
}
