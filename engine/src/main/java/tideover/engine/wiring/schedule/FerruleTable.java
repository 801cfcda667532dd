package tideover.engine.wiring.schedule;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Source;

/** Ferrules there are, by section. Source: the data file's own columns. */
public final class FerruleTable {

    /** One size. */
    public record Row(Ferrule ferrule, Source source) {}

    private final List<Row> rows;

    public FerruleTable(List<Row> rows) {
        this.rows = List.copyOf(rows);
    }

    /**
     * The longest ferrule that is no longer than what is stripped; the shortest where nobody has said how long that is.
     *
     * @param strippedLengthM as the maker of the terminal wants it [m]
     * @return nothing where none is made for the section
     */
    public Optional<Ferrule> find(double crossSectionMm2, @Nullable Double strippedLengthM) {
        Comparator<Ferrule> byLength = Comparator.comparingDouble(Ferrule::sleeveLengthM);
        List<Ferrule> fitting = rows.stream()
                .map(Row::ferrule)
                .filter(ferrule -> ferrule.crossSectionMm2() == crossSectionMm2)
                .sorted(byLength)
                .toList();
        if (strippedLengthM == null) return fitting.stream().findFirst();
        return fitting.stream()
                .filter(ferrule -> ferrule.sleeveLengthM() <= strippedLengthM)
                .max(byLength)
                .or(() -> fitting.stream().findFirst());
    }
}
