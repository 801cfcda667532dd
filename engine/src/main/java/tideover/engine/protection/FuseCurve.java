package tideover.engine.protection;

import java.util.List;
import tideover.engine.rules.Source;

/**
 * A gG fuse-link. Time–current characteristics bend the same way all along on double logarithmic paper, so the straight
 * line between two guaranteed points lies on the safe side of any allowed characteristic.
 *
 * @param latest           points at which it has melted, smallest current first
 * @param earliest         points until which it has not, smallest current first
 * @param cableFusingRatio conventional fusing current on a cable over rated current
 */
record FuseCurve(double ratedCurrentA, List<Point> latest, List<Point> earliest, double cableFusingRatio)
        implements TripCurve {

    FuseCurve {
        latest = List.copyOf(latest);
        earliest = List.copyOf(earliest);
    }

    /**
     * {@inheritDoc}
     *
     * <p>The I²t needed to melt never falls with a smaller current, because more heat is lost: from each point the time
     * rises at least with the square.
     */
    @Override
    public double earliestS(double currentA) {
        if (currentA <= ratedCurrentA) return Double.POSITIVE_INFINITY;
        double earliestS = 0;
        for (Point point : earliest) {
            double share = point.currentA() / currentA;
            if (share >= 1) earliestS = Math.max(earliestS, point.timeS() * share * share);
        }
        return earliestS;
    }

    @Override
    public double latestS(double currentA) {
        if (currentA < latest.get(0).currentA()) return Double.POSITIVE_INFINITY;
        for (int i = 1; i < latest.size(); i++) {
            Point left = latest.get(i - 1);
            Point right = latest.get(i);
            if (currentA <= right.currentA())
                return interpolate(currentA, left.currentA(), right.currentA(), left.timeS(), right.timeS());
        }
        return latest.get(latest.size() - 1).timeS();
    }

    @Override
    public double currentForDisconnectionA(double timeS) {
        if (timeS >= latest.get(0).timeS()) return latest.get(0).currentA();
        for (int i = 1; i < latest.size(); i++) {
            Point left = latest.get(i - 1);
            Point right = latest.get(i);
            if (timeS >= right.timeS())
                return interpolate(timeS, left.timeS(), right.timeS(), left.currentA(), right.currentA());
        }
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public double conventionalTrippingCurrentA() {
        return cableFusingRatio * ratedCurrentA;
    }

    @Override
    public Source source(double timeS) {
        for (Point point : latest) if (timeS >= point.timeS()) return point.source();
        return latest.get(latest.size() - 1).source();
    }

    @Override
    public List<Point> points(Guarantee guarantee) {
        return guarantee == Guarantee.WITHIN ? latest : earliest;
    }

    /** On the straight line through two points on double logarithmic paper; exact at both. */
    private static double interpolate(double x, double leftX, double rightX, double leftY, double rightY) {
        if (x == leftX) return leftY;
        if (x == rightX) return rightY;
        return leftY * Math.pow(rightY / leftY, Math.log(x / leftX) / Math.log(rightX / leftX));
    }
}
