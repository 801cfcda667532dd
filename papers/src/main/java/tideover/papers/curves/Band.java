package tideover.papers.curves;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import tideover.engine.protection.Guarantee;
import tideover.engine.protection.TripCurve;

/** The outline of a device's band on the sheet. */
final class Band {

    /** Currents at which a straight part is looked at again; parts are straight on this paper, jumps are caught apart. */
    private static final int STEPS_PER_DECADE = 24;

    private final TripCurve curve;
    private final double largestA;

    /** @param largestA current up to which it is drawn: more cannot flow [A] */
    Band(TripCurve curve, double largestA) {
        this.curve = curve;
        this.largestA = Math.min(largestA, Scales.LARGEST_A);
    }

    /** Earliest opening from left to right, as far as it lies inside the scale: x and y in turn [mm]. */
    double[] earliest() {
        return inside(line(curve::earliestS));
    }

    /** Latest opening from left to right, as far as it lies inside the scale: x and y in turn [mm]. */
    double[] latest() {
        return inside(line(curve::latestS));
    }

    /** Without what would run along the upper or lower edge. */
    private static double[] inside(double[] xy) {
        int from = 0;
        while (from + 4 < xy.length && xy[from + 3] == Scales.TOP) from += 2;
        int to = xy.length;
        while (to - 4 > from && xy[to - 3] == Scales.BOTTOM) to -= 2;
        return Arrays.copyOfRange(xy, from, to);
    }

    /** The area between the two: x and y in turn [mm]. */
    double[] area() {
        double[] there = line(curve::earliestS);
        double[] back = line(curve::latestS);
        double[] area = new double[there.length + back.length];
        System.arraycopy(there, 0, area, 0, there.length);
        for (int i = 0; i < back.length; i += 2) {
            area[there.length + i] = back[back.length - 2 - i];
            area[there.length + i + 1] = back[back.length - 1 - i];
        }
        return area;
    }

    /** On both sides of each corner the time is asked, so that jumps are drawn upright at their very current. */
    private double[] line(DoubleUnaryOperator timeS) {
        List<Double> xy = new ArrayList<>();
        for (double currentA : currents()) {
            for (double at : new double[] {Math.nextDown(currentA), currentA, Math.nextUp(currentA)}) {
                double x = Scales.x(currentA);
                double y = Scales.y(timeS.applyAsDouble(at));
                int size = xy.size();
                if (size > 0 && xy.get(size - 2) == x && xy.get(size - 1) == y) continue;
                xy.add(x);
                xy.add(y);
            }
        }
        return xy.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private TreeSet<Double> currents() {
        TreeSet<Double> currents = new TreeSet<>();
        for (int i = 0; ; i++) {
            double currentA = Scales.SMALLEST_A * Math.pow(10, i / (double) STEPS_PER_DECADE);
            if (currentA >= largestA) break;
            currents.add(currentA);
        }
        currents.add(largestA);
        corner(currents, curve.ratedCurrentA());
        for (Guarantee guarantee : Guarantee.values())
            for (TripCurve.Point point : curve.points(guarantee)) corner(currents, point.currentA());
        return currents;
    }

    private void corner(TreeSet<Double> currents, double currentA) {
        if (Scales.shows(currentA) && currentA <= largestA) currents.add(currentA);
    }
}
