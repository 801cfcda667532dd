package tideover.engine.network;

import java.util.Comparator;
import java.util.List;
import tideover.engine.rules.Source;

/** What third harmonics take from the ampacity of cables of four and five cores with a neutral as large as the lines. */
public final class HarmonicTable {

    /** The conductor by whose current the cross-section is chosen. */
    public enum SizedOn {
        LINE,
        /** The neutral carries more than a line: three times the third harmonic of one. */
        NEUTRAL
    }

    /**
     * One band of the share of the third harmonic in the line current.
     *
     * @param aboveRatio  third harmonic over line current, above this; the first row begins at 0
     * @param upToRatio   up to this
     * @param factorRatio on the ampacity of three loaded conductors
     */
    public record Row(double aboveRatio, double upToRatio, SizedOn sizedOn, double factorRatio, Source source) {}

    private final List<Row> rows;

    public HarmonicTable(List<Row> rows) {
        this.rows =
                rows.stream().sorted(Comparator.comparingDouble(Row::upToRatio)).toList();
    }

    /**
     * The row that holds for a load.
     *
     * @param thirdHarmonicRatio third harmonic over line current, r.m.s., 0 to 1
     * @throws IllegalArgumentException if it is outside 0 to 1
     * @see "IEC 60364-5-52:2009, Table E.52.1"
     */
    public Row require(double thirdHarmonicRatio) {
        for (Row row : rows) if (thirdHarmonicRatio >= 0 && thirdHarmonicRatio <= row.upToRatio()) return row;
        throw new IllegalArgumentException("thirdHarmonicRatio %s is outside 0..1".formatted(thirdHarmonicRatio));
    }

    /**
     * Current of the neutral of three equally loaded lines, whose third harmonics add in it.
     *
     * @param lineCurrentA       of each line, r.m.s. [A]
     * @param thirdHarmonicRatio third harmonic over line current
     * @see "IEC 60364-5-52:2009, Annex E"
     */
    public static double neutralCurrentA(double lineCurrentA, double thirdHarmonicRatio) {
        return 3 * thirdHarmonicRatio * lineCurrentA;
    }
}
