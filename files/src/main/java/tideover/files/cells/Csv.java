package tideover.files.cells;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.files.InputProblem;
import tideover.files.text.Numbers;

/** Comma-separated values (RFC 4180) that no spreadsheet takes for formulas. */
final class Csv {

    static final int LARGEST_BYTES = 4 * 1024 * 1024;

    private static final char MARK = '\ufeff';

    /** What a spreadsheet may take for a formula, behind blanks too; also in the wide forms of the signs. */
    private static final Pattern FORMULA =
            Pattern.compile("[\\t\\r\\n].*|[\\s\\u00a0]*[=+\\-@\uff1d\uff0b\uff0d\uff20].*", Pattern.DOTALL);

    /** One row with the line in which it begins, from 1. */
    record Row(int line, List<String> cells) {
        Row {
            cells = List.copyOf(cells);
        }

        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    private Csv() {}

    /** The text of a file; nothing after a problem. */
    static @Nullable String decoded(String file, byte[] bytes, List<InputProblem> problems) {
        if (bytes.length > LARGEST_BYTES) {
            problems.add(CellProblem.LIST_TOO_LARGE.at(file, 0, 0, "", String.valueOf(LARGEST_BYTES >> 20)));
            return null;
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            // UTF-16 without its mark decodes, with a zero beside each letter.
            if (text.indexOf('\0') >= 0) throw new CharacterCodingException();
            return text.isEmpty() || text.charAt(0) != MARK ? text : text.substring(1);
        } catch (CharacterCodingException e) {
            problems.add(CellProblem.LIST_ENCODING.at(file, 0, 0, ""));
            return null;
        }
    }

    /** The separator by which most cells of the header are known columns; where none is, by which there are most. */
    static char separator(String text, Set<String> columns) {
        Set<String> known = new HashSet<>();
        for (String column : columns) known.add(column.toLowerCase(Locale.ROOT));
        String header = text.lines().findFirst().orElse("");
        char best = ',';
        int most = -1;
        for (char separator : new char[] {',', ';', '\t'}) {
            List<Row> rows = new ArrayList<>();
            read("", header, separator, rows, new ArrayList<>());
            int score = 0;
            for (Row row : rows)
                for (String cell : row.cells())
                    score += known.contains(cell.strip().toLowerCase(Locale.ROOT)) ? 1000 : 1;
            if (score <= most) continue;
            most = score;
            best = separator;
        }
        return best;
    }

    /** All rows up to the first that cannot be read. */
    static void read(String file, String text, char separator, List<Row> rows, List<InputProblem> problems) {
        CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .ofCsvRecord(text);
        int next = 1;
        try {
            for (CsvRecord record : reader) {
                int line = (int) record.getStartingLineNumber();
                rows.add(new Row(line, record.getFields()));
                next = line + 1;
                for (String cell : record.getFields())
                    next += (int) cell.lines().count() - (cell.isEmpty() ? 0 : 1);
            }
        } catch (CsvParseException e) {
            problems.add(CellProblem.LIST_QUOTE.at(file, next, 1, ""));
        }
    }

    /** The text of rows. */
    static String written(List<List<String>> rows) {
        StringWriter text = new StringWriter();
        try (CsvWriter writer =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            for (List<String> row : rows)
                writer.writeRecord(row.stream().map(Csv::guarded).toList());
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot be written", e);
        }
        return text.toString();
    }

    /** The text with an apostrophe before what a spreadsheet would take for a formula. */
    static String guarded(String text) {
        String bare = withoutApostrophes(text);
        boolean guarded = bare.length() < text.length();
        return FORMULA.matcher(bare).matches() && (guarded || Numbers.parse(text) == null) ? "'" + text : text;
    }

    /** The text that was guarded. */
    static String unguarded(String cell) {
        String bare = withoutApostrophes(cell);
        return bare.length() < cell.length() && FORMULA.matcher(bare).matches() ? cell.substring(1) : cell;
    }

    private static String withoutApostrophes(String text) {
        int at = 0;
        while (at < text.length() && text.charAt(at) == '\'') at++;
        return text.substring(at);
    }
}
