package tideover.engine.starting;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.OverloadPoint;

/**
 * What the sources of a group give on one line, or over all lines together as the mean of their currents: for good, and
 * for a while.
 *
 * @param line        which; nothing for all together
 * @param lines       the lines the mean is taken of
 * @param continuousA for good [A]; infinite where nothing limits
 * @param parts       what each inverter adds; none where the grid is the source, which gives any start
 */
record Capacity(@Nullable Conductor line, List<Conductor> lines, double continuousA, List<Part> parts) {

    /**
     * One inverter.
     *
     * @param continuousA what it adds for good [A]
     */
    record Part(Inverter inverter, double continuousA) {

        /**
         * Times its continuous current that it gives for a time. Its curve is read as steps: a point holds up to its time,
         * between two points the lower one, beyond the last the continuous current.
         */
        double allowedRatio(double timeS, Bound bound) {
            List<OverloadPoint> curve = inverter.overload();
            if (bound == Bound.BEST && !isCurveKnown()) return Double.POSITIVE_INFINITY;
            double allowed = 1;
            if (curve == null) return allowed;
            for (OverloadPoint point : curve) {
                Double ratio = point.currentRatio();
                Double holdsS = point.timeS();
                if (ratio != null && holdsS != null && holdsS >= timeS) allowed = Math.max(allowed, ratio);
            }
            return allowed;
        }

        boolean isCurveKnown() {
            List<OverloadPoint> curve = inverter.overload();
            return curve != null
                    && curve.stream().allMatch(point -> point.currentRatio() != null && point.timeS() != null);
        }
    }

    Capacity {
        lines = List.copyOf(lines);
        parts = List.copyOf(parts);
    }

    /** What several inverters give together. */
    static Capacity of(@Nullable Conductor line, List<Conductor> lines, List<Part> parts) {
        double sumA = 0;
        for (Part part : parts) sumA += part.continuousA();
        return new Capacity(line, lines, sumA, parts);
    }

    /** What may flow for a time [A]. */
    double allowedA(double timeS, Bound bound) {
        if (parts.isEmpty()) return Double.POSITIVE_INFINITY;
        double sumA = 0;
        for (Part part : parts) sumA += part.continuousA() * part.allowedRatio(timeS, bound);
        return sumA;
    }

    /** Overload curves nobody has stated. */
    List<FactId> missing() {
        List<FactId> missing = new ArrayList<>(0);
        for (Part part : parts)
            if (!part.isCurveKnown()) missing.add(part.inverter().fact("overload"));
        return missing;
    }

    boolean concerns(List<Conductor> others) {
        for (Conductor each : others) if (lines.contains(each)) return true;
        return false;
    }

    /** A moment on it. */
    Peak peak(Currents before, Currents during, double timeS, Bound bound) {
        return new Peak(line, before.meanA(lines), during.meanA(lines), allowedA(timeS, bound), timeS);
    }
}
