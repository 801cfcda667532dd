package tideover.engine.network;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import tideover.engine.rules.Source;
import tideover.engine.site.StartKind;

/** What loads of homes draw while they start, for those whose own figures nobody has stated. */
public final class StartTable {

    private final Map<StartKind, Row> rows = new EnumMap<>(StartKind.class);

    /**
     * One kind of start.
     *
     * @param smallestRatio            starting current over running current, at least
     * @param largestRatio             starting current over running current, at most
     * @param shortestS                duration of the start, at least [s]; 0 where there is none
     * @param longestS                 duration of the start, at most [s]
     * @param smallestPowerFactorRatio cos φ while it starts, at least
     * @param largestPowerFactorRatio  cos φ while it starts, at most
     */
    public record Row(
            StartKind start,
            double smallestRatio,
            double largestRatio,
            double shortestS,
            double longestS,
            double smallestPowerFactorRatio,
            double largestPowerFactorRatio,
            Source source) {}

    public StartTable(List<Row> rows) {
        for (Row row : rows) this.rows.put(row.start(), row);
        for (StartKind start : StartKind.values()) require(start);
    }

    /** The figures of one kind of start. */
    public Row require(StartKind start) {
        Row found = rows.get(start);
        if (found == null) throw new IllegalArgumentException("no figures for a start of kind " + start);
        return found;
    }
}
