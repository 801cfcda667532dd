package tideover.files.tables;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
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
            if (in == null) throw new IllegalStateException("table " + file + " is missing from the program");
            List<Row> rows = new ArrayList<>();
            List<String> header = List.of();
            Row previous = null;
            try (CsvReader<CsvRecord> reader =
                    CsvReader.builder().ofCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                for (CsvRecord cells : reader) {
                    if (header.isEmpty()) {
                        header = cells.getFields();
                    } else {
                        previous = new Row(file, header, cells, previous);
                        rows.add(previous);
                    }
                }
            }
            return new Table(file, rows);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read table " + file, e);
        }
    }

    /** One value of each row. */
    <T> List<T> map(Function<Row, T> value) {
        List<T> values = new ArrayList<>(rows.size());
        for (Row row : rows) values.add(value.apply(row));
        return values;
    }

    /** Several values of each row, where a cell lists all it holds for. */
    <T> List<T> flatMap(Function<Row, List<T>> some) {
        List<T> values = new ArrayList<>(rows.size());
        for (Row row : rows) values.addAll(some.apply(row));
        return values;
    }

    /** One line of a table. */
    static final class Row {
        private final String file;
        private final List<String> header;
        private final CsvRecord cells;
        private final Source source;

        private Row(String file, List<String> header, CsvRecord cells, @Nullable Row previous) {
            this.file = file;
            this.header = header;
            this.cells = cells;
            // Hundreds of rows cite one table: they share what they cite.
            Source own = new Source(text("source"), text("place"), word("verification", Verification.class));
            this.source = previous != null && previous.source.equals(own) ? previous.source : own;
        }

        String text(String column) {
            int index = header.indexOf(column);
            if (index < 0 || index >= cells.getFieldCount()) throw wrong(column, "is missing", null);
            return cells.getField(index);
        }

        double number(String column) {
            String text = text(column);
            try {
                return Double.parseDouble(text);
            } catch (NumberFormatException e) {
                throw wrong(column, "'" + text + "' is no number", e);
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
            return source;
        }

        private <E extends Enum<E>> E word(String column, Class<E> kind, String word) {
            try {
                return Enum.valueOf(kind, word);
            } catch (IllegalArgumentException e) {
                throw wrong(column, "'" + word + "' is no " + kind.getSimpleName(), e);
            }
        }

        private IllegalStateException wrong(String column, String what, @Nullable Throwable cause) {
            return new IllegalStateException(
                    "table %s, line %d, column %s %s".formatted(file, cells.getStartingLineNumber(), column, what),
                    cause);
        }
    }
}
