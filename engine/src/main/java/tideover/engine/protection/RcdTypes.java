package tideover.engine.protection;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import tideover.engine.rules.Source;
import tideover.engine.site.RcdType;

/** How much smooth d.c. the types of residual current devices bear before they may go blind. */
public final class RcdTypes {

    private final Map<RcdType, Row> rows = new EnumMap<>(RcdType.class);

    /**
     * One type.
     *
     * @param toleratedSmoothDcA     superimposed smooth d.c. at which it still works [A]
     * @param toleratedSmoothDcRatio the same over the rated residual current, where that is larger; else 0
     */
    public record Row(RcdType type, double toleratedSmoothDcA, double toleratedSmoothDcRatio, Source source) {}

    public RcdTypes(List<Row> rows) {
        for (Row row : rows) this.rows.put(row.type(), row);
        for (RcdType type : RcdType.values())
            if (!this.rows.containsKey(type)) throw new IllegalArgumentException("nothing about RCDs of type " + type);
    }

    /**
     * Smooth d.c. at which the device still works as it should.
     *
     * @param ratedResidualCurrentA rated residual current [A]
     * @return d.c. [A]; 0.006 for type A
     * @see "IEC 61008-1 and IEC 61009-1 (types AC and A); IEC 62423 (types F and B)"
     */
    public double toleratedSmoothDcA(RcdType type, double ratedResidualCurrentA) {
        Row row = row(type);
        return Math.max(row.toleratedSmoothDcA(), row.toleratedSmoothDcRatio() * ratedResidualCurrentA);
    }

    /** Where the figure stands. */
    public Source source(RcdType type) {
        return row(type).source();
    }

    private Row row(RcdType type) {
        Row row = rows.get(type);
        if (row == null) throw new IllegalStateException("refused by the constructor");
        return row;
    }
}
