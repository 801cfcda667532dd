package tideover.engine.wiring.colour;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Source;

/** Colours of conductors by country and age. Source: the data file's own columns. */
public final class ConductorColours {

    /** What holds where a country has no rows of its own. */
    public static final String EVERYWHERE = "IEC";

    /**
     * One line of the table.
     *
     * @param country   two letters (ISO 3166-1), or {@link #EVERYWHERE}
     * @param fromYear  first year of installation it is found in; nothing: as long as anybody remembers
     * @param untilYear last year; nothing: it holds today
     * @param endMark   further colour at the ends; nothing: none
     */
    public record Row(
            String country,
            ConductorUse use,
            @Nullable Integer fromYear,
            @Nullable Integer untilYear,
            Colour colour,
            @Nullable Colour endMark,
            Source source) {

        private boolean holdsIn(int year) {
            return (fromYear == null || fromYear <= year) && (untilYear == null || year <= untilYear);
        }
    }

    private final List<Row> rows;

    public ConductorColours(List<Row> rows) {
        this.rows = List.copyOf(rows);
    }

    /** The colour a conductor gets today; without a country as the international standard has it. */
    public Optional<Row> find(@Nullable String country, ConductorUse use) {
        return own(country, use).stream()
                .filter(row -> row.untilYear() == null)
                .findFirst()
                .or(() -> country == null || !country.equals(EVERYWHERE) ? find(EVERYWHERE, use) : Optional.empty());
    }

    /** The colour to be expected on a conductor of a certain year. */
    public Optional<Row> find(@Nullable String country, ConductorUse use, int year) {
        return own(country, use).stream()
                .filter(row -> row.holdsIn(year))
                .findFirst()
                .or(() -> find(country, use));
    }

    /** Colours of earlier years that may still be met in a country. */
    public List<Row> older(@Nullable String country) {
        return rows.stream()
                .filter(row -> row.country().equals(country) && row.untilYear() != null)
                .toList();
    }

    private List<Row> own(@Nullable String country, ConductorUse use) {
        String asked = country == null ? EVERYWHERE : country;
        return rows.stream()
                .filter(row -> row.country().equals(asked) && row.use() == use)
                .toList();
    }
}
