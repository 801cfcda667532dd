package tideover.engine.protection;

import java.util.Comparator;
import java.util.List;
import tideover.engine.rules.Source;

/**
 * A circuit-breaker. Between the test currents the standard says nothing: the time changes only at a test current, to
 * the safe side.
 *
 * @param points rows that hold for this breaker, at least one of each guarantee
 */
record BreakerCurve(double ratedCurrentA, List<TripCurves.BreakerPoint> points) implements TripCurve {

    BreakerCurve {
        points = List.copyOf(points);
    }

    @Override
    public double earliestS(double currentA) {
        if (currentA <= ratedCurrentA) return Double.POSITIVE_INFINITY;
        double earliestS = 0;
        for (TripCurves.BreakerPoint point : points)
            if (point.guarantee() == Guarantee.NOT_WITHIN && currentA <= point.multipleRatio() * ratedCurrentA)
                earliestS = Math.max(earliestS, point.timeS());
        return earliestS;
    }

    @Override
    public double latestS(double currentA) {
        double latestS = Double.POSITIVE_INFINITY;
        for (TripCurves.BreakerPoint point : points)
            if (point.guarantee() == Guarantee.WITHIN && currentA >= point.multipleRatio() * ratedCurrentA)
                latestS = Math.min(latestS, point.timeS());
        return latestS;
    }

    @Override
    public double currentForDisconnectionA(double timeS) {
        double currentA = Double.POSITIVE_INFINITY;
        for (TripCurves.BreakerPoint point : points)
            if (point.guarantee() == Guarantee.WITHIN && point.timeS() <= timeS)
                currentA = Math.min(currentA, point.multipleRatio() * ratedCurrentA);
        return currentA;
    }

    @Override
    public double conventionalTrippingCurrentA() {
        return currentForDisconnectionA(Double.POSITIVE_INFINITY);
    }

    @Override
    public Source source(double timeS) {
        double currentA = currentForDisconnectionA(timeS);
        for (TripCurves.BreakerPoint point : points)
            if (point.guarantee() == Guarantee.WITHIN && point.multipleRatio() * ratedCurrentA == currentA)
                return point.source();
        return points.get(0).source();
    }

    @Override
    public List<Point> points(Guarantee guarantee) {
        return points.stream()
                .filter(point -> point.guarantee() == guarantee)
                .map(point -> new Point(point.multipleRatio() * ratedCurrentA, point.timeS(), point.source()))
                .sorted(Comparator.comparingDouble(Point::currentA))
                .toList();
    }
}
