package tideover.engine.protection;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tideover.engine.rules.Source;
import tideover.engine.site.RcdDelay;

/** Break times of residual current devices at a.c. residual currents. */
public final class RcdTimes {

    private final Map<RcdDelay, TreeMap<Double, Row>> rows = new EnumMap<>(RcdDelay.class);

    /**
     * One test current.
     *
     * @param multipleRatio residual current over rated residual current
     * @param earliestS     shortest time it must stay closed [s]; 0 without intentional delay
     * @param latestS       longest break time [s]
     */
    public record Row(RcdDelay delay, double multipleRatio, double earliestS, double latestS, Source source) {}

    public RcdTimes(List<Row> rows) {
        for (Row row : rows)
            this.rows.computeIfAbsent(row.delay(), d -> new TreeMap<>()).put(row.multipleRatio(), row);
        for (RcdDelay delay : RcdDelay.values())
            if (!this.rows.containsKey(delay))
                throw new IllegalArgumentException("no break times for RCDs of kind " + delay);
    }

    /**
     * Latest opening at a residual current; between two test currents that of the smaller one.
     *
     * @param multipleOfRatedRatio residual current over rated residual current
     * @return time [s]; +infinity below the rated residual current, where nothing is guaranteed
     * @see "IEC 61008-1 and IEC 61009-1, Table 1"
     */
    public double latestS(RcdDelay delay, double multipleOfRatedRatio) {
        Map.Entry<Double, Row> row = rows(delay).floorEntry(multipleOfRatedRatio);
        return row == null ? Double.POSITIVE_INFINITY : row.getValue().latestS();
    }

    /**
     * Earliest opening at a residual current; between two test currents that of the larger one.
     *
     * @param multipleOfRatedRatio residual current over rated residual current
     * @return time [s]; 0 if it may open at once, +infinity up to half the rated residual current, where it must hold
     */
    public double earliestS(RcdDelay delay, double multipleOfRatedRatio) {
        // Below the rated residual current it may open, from half of it on.
        if (multipleOfRatedRatio <= 0.5) return Double.POSITIVE_INFINITY;
        Map.Entry<Double, Row> row = rows(delay).ceilingEntry(multipleOfRatedRatio);
        return row == null
                ? rows(delay).lastEntry().getValue().earliestS()
                : row.getValue().earliestS();
    }

    /** Where the times stand. */
    public Source source(RcdDelay delay) {
        return rows(delay).firstEntry().getValue().source();
    }

    private TreeMap<Double, Row> rows(RcdDelay delay) {
        TreeMap<Double, Row> found = rows.get(delay);
        if (found == null) throw new IllegalStateException("refused by the constructor");
        return found;
    }
}
