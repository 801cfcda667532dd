package tideover.engine.network;

import java.util.Comparator;
import java.util.List;
import tideover.engine.rules.Source;

/** Smallest protective conductors without calculation, of the same material as the lines. */
public final class ProtectiveConductorTable {

    private final List<Row> rows;

    /**
     * One band of line conductors.
     *
     * @param lineUpToMm2       largest line of the band [mm²]
     * @param crossSectionMm2   smallest protective conductor if that is a fixed section, else 0 [mm²]
     * @param crossSectionRatio smallest protective conductor as a share of the line, else 0
     * @param source            where it stands
     */
    public record Row(double lineUpToMm2, double crossSectionMm2, double crossSectionRatio, Source source) {}

    public ProtectiveConductorTable(List<Row> rows) {
        this.rows = rows.stream()
                .sorted(Comparator.comparingDouble(Row::lineUpToMm2))
                .toList();
    }

    /**
     * Smallest protective conductor for a line conductor of the same material.
     *
     * @param lineMm2 cross-section of the line [mm²], above 0
     * @return cross-section [mm²]; between standard sections the next larger one is meant
     * @throws IllegalArgumentException if the line is outside the table
     * @see "IEC 60364-5-54:2011, Table 54.2"
     */
    public double smallestMm2(double lineMm2) {
        Row row = requireRow(lineMm2);
        return Math.max(row.crossSectionMm2(), row.crossSectionRatio() * lineMm2);
    }

    /** Where the value for such a line stands. */
    public Source source(double lineMm2) {
        return requireRow(lineMm2).source();
    }

    private Row requireRow(double lineMm2) {
        for (Row row : rows) if (lineMm2 > 0 && lineMm2 <= row.lineUpToMm2()) return row;
        throw new IllegalArgumentException("lineMm2 %s is outside the table".formatted(lineMm2));
    }
}
