package tideover.reference.outside;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tideover.engine.rules.Verification;

/**
 * One published value: a row of an {@code expected.csv}. The columns before {@code published} say what is given.
 *
 * @param folder       where the row and the README about it stand
 * @param cells        as written
 * @param agreement    how ours must stand to it
 * @param verification how far the published value was seen
 */
record Published(String folder, NamedCsvRecord cells, Agreement agreement, Verification verification) {

    /** How our value must stand to the published one. */
    enum Agreement {
        /** Equal within the tolerance. */
        EQUAL,
        /** Ours may be larger. */
        NOT_BELOW,
        /** Ours may be smaller. */
        NOT_ABOVE
    }

    static List<Published> read(String folder) {
        String file = "/tideover/reference/outside/%s/expected.csv".formatted(folder);
        try (InputStream in = Published.class.getResourceAsStream(file)) {
            if (in == null) throw new IllegalStateException(file + " is missing");
            List<Published> rows = new ArrayList<>();
            CsvReader.builder()
                    .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .forEach(cells -> rows.add(new Published(
                            folder,
                            cells,
                            Agreement.valueOf(cells.getField("agreement")),
                            Verification.valueOf(cells.getField("verification")))));
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    String text(String column) {
        return cells.getField(column);
    }

    double number(String column) {
        return Double.parseDouble(text(column));
    }

    <E extends Enum<E>> E word(String column, Class<E> kind) {
        return Enum.valueOf(kind, text(column));
    }

    /** What is given, in the order of the columns. */
    String given() {
        return cells.getHeader().stream()
                .takeWhile(column -> !column.equals("published"))
                .map(this::text)
                .collect(Collectors.joining(" "));
    }

    boolean agreesWith(double ours) {
        double published = number("published");
        // The tolerance is half a printed digit; a value exactly in the middle is not lost to binary fractions.
        double tolerance = number("tolerance") + 1e-9;
        return switch (agreement) {
            case EQUAL -> Math.abs(ours - published) <= tolerance;
            case NOT_BELOW -> ours >= published - tolerance;
            case NOT_ABOVE -> ours <= published + tolerance;
        };
    }

    @Override
    public String toString() {
        return "%s %s: %s %s (%s)".formatted(folder, given(), agreement, text("published"), text("place"));
    }
}
