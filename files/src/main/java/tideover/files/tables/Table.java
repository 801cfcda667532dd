package tideover.files.tables;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Source;
import tideover.engine.rules.Verification;

/**
 * One CSV table of the program. Its rows are the program's own: what is wrong with them is our fault and stops it.
 *
 * @param file name of the file
 * @param rows in the order of the file, without the header
 */
record Table(String file, List<Row> rows) {

    Table {
        rows = List.copyOf(rows);
    }

    static Table read(String file) {
        try (InputStream in = Table.class.getResourceAsStream(file)) {
            if (in == null) throw new IllegalStateException("table %s is missing from the program".formatted(file));
            List<Row> rows = new ArrayList<>();
            try (CsvReader<NamedCsvRecord> reader =
                    CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                for (NamedCsvRecord cells : reader) rows.add(new Row(file, cells));
            }
            return new Table(file, rows);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read table " + file, e);
        }
    }

    /** One value of each row. */
    <T> List<T> map(Function<Row, T> value) {
        return rows.stream().map(value).toList();
    }

    /** Several values of each row, where a cell lists all it holds for. */
    <T> List<T> flatMap(Function<Row, List<T>> values) {
        return rows.stream().flatMap(row -> values.apply(row).stream()).toList();
    }

    /** One line of a table. */
    static final class Row {
        private final String file;
        private final NamedCsvRecord cells;

        private Row(String file, NamedCsvRecord cells) {
            this.file = file;
            this.cells = cells;
        }

        String text(String column) {
            return cells.findField(column).orElseThrow(() -> wrong(column, "is missing", null));
        }

        double number(String column) {
            String text = text(column);
            try {
                return Double.parseDouble(text);
            } catch (NumberFormatException e) {
                throw wrong(column, "'%s' is no number".formatted(text), e);
            }
        }

        <E extends Enum<E>> E word(String column, Class<E> kind) {
            return word(column, kind, text(column));
        }

        /** The words of a cell, parted by blanks. */
        <E extends Enum<E>> List<E> words(String column, Class<E> kind) {
            List<E> words = new ArrayList<>();
            for (String word : text(column).split(" ")) words.add(word(column, kind, word));
            return words;
        }

        /** The last three columns. */
        Source source() {
            return new Source(text("source"), text("place"), word("verification", Verification.class));
        }

        private <E extends Enum<E>> E word(String column, Class<E> kind, String word) {
            try {
                return Enum.valueOf(kind, word);
            } catch (IllegalArgumentException e) {
                throw wrong(column, "'%s' is no %s".formatted(word, kind.getSimpleName()), e);
            }
        }

        private IllegalStateException wrong(String column, String what, @Nullable Throwable cause) {
            return new IllegalStateException(
                    "table %s, line %d, column %s %s".formatted(file, cells.getStartingLineNumber(), column, what),
                    cause);
        }
    }
}
