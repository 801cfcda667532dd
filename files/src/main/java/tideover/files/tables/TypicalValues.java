package tideover.files.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Converter;
import tideover.engine.site.Curve;
import tideover.engine.site.Importance;
import tideover.engine.site.LoadKind;
import tideover.engine.site.RcdType;
import tideover.engine.site.StartKind;
import tideover.engine.site.SupplyLines;
import tideover.files.tables.Table.Row;
import tideover.files.tables.TypicalLoad.Habit;

/** What is common in houses; each row says so as its source. Safe to share between threads. */
public final class TypicalValues {
    private final List<TypicalLoad> loads;
    private final Map<String, Map<String, String>> parts;
    private final List<Row> sizes;

    private TypicalValues(List<TypicalLoad> loads, Map<String, Map<String, String>> parts, List<Row> sizes) {
        this.loads = loads;
        this.parts = parts;
        this.sizes = sizes;
    }

    /** The values that come with the program. */
    public static TypicalValues load() {
        Map<String, Map<String, String>> parts = new LinkedHashMap<>();
        for (Row row : Table.read("typical-parts.csv").rows())
            parts.computeIfAbsent(row.text("part"), part -> new LinkedHashMap<>())
                    .put(row.text("field"), row.text("value"));
        return new TypicalValues(
                Table.read("typical-loads.csv").map(TypicalValues::load),
                parts,
                Table.read("typical-sizes.csv").rows());
    }

    private static TypicalLoad load(Row row) {
        return new TypicalLoad(
                row.text("load"),
                row.word("kind", LoadKind.class),
                row.number("powerW"),
                row.word("lines", SupplyLines.class),
                row.word("curve", Curve.class),
                row.number("ratedCurrentA"),
                row.number("crossSectionMm2"),
                row.number("lengthM"),
                row.text("converter").isEmpty() ? null : row.word("converter", Converter.class),
                row.word("start", StartKind.class),
                optional(row, "startCurrentRatio"),
                optional(row, "startTimeS"),
                row.text("ownRcd").isEmpty() ? null : row.word("ownRcd", RcdType.class),
                row.word("importance", Importance.class),
                row.word("staysOn", Habit.class),
                row.word("usual", Habit.class));
    }

    private static @Nullable Double optional(Row row, String column) {
        return row.text(column).isEmpty() ? null : Double.valueOf(row.number(column));
    }

    /** Loads of houses and their circuits. */
    public List<TypicalLoad> loads() {
        return loads;
    }

    /**
     * What a part of a house is mostly like.
     *
     * @return value by field, as in a site file
     */
    public Map<String, String> part(String name) {
        Map<String, String> part = parts.get(name);
        if (part == null) throw new IllegalArgumentException("there is no typical " + name);
        return part;
    }

    /** What is made in certain rated currents. */
    public enum Made {
        FUSE("fuse"),
        BREAKER("breaker"),
        ISLANDING_SWITCH("islandingSwitch");

        private final String column;

        Made(String column) {
            this.column = column;
        }
    }

    /** The smallest rated current of the series that is not below another [A]; the largest where none is. */
    public double ratedCurrentFromA(Made made, double leastA) {
        double largestA = 0;
        for (Row row : sizes) {
            if (!row.text(made.column).equals(Habit.YES.name())) continue;
            largestA = row.number("ratedCurrentA");
            if (largestA >= leastA) return largestA;
        }
        return largestA;
    }

    /** The largest rated current of the series that is not above another [A]; the smallest where none is. */
    public double ratedCurrentUpToA(Made made, double mostA) {
        double foundA = 0;
        for (Row row : sizes) {
            if (!row.text(made.column).equals(Habit.YES.name())) continue;
            double ratedA = row.number("ratedCurrentA");
            if (foundA == 0 || ratedA <= mostA) foundA = ratedA;
        }
        return foundA;
    }

    /** Section of copper that is mostly laid behind an overcurrent device of this rated current [mm²]. */
    public double crossSectionMm2(double ratedCurrentA) {
        double sectionMm2 = 0;
        for (Row row : sizes) {
            sectionMm2 = row.number("crossSectionMm2");
            if (row.number("ratedCurrentA") >= ratedCurrentA) return sectionMm2;
        }
        return sectionMm2;
    }
}
