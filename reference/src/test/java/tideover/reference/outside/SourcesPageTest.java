package tideover.reference.outside;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Verification;
import tideover.files.rules.RuleBooks;
import tideover.files.tables.TableFiles;

/** The lower half of docs/sources.md is written from the data, so that it cannot grow old. */
class SourcesPageTest {

    private static final Path PAGE = Path.of("..", "docs", "sources.md");
    private static final String MARK =
            "<!-- All below is written by SourcesPageTest; run it with -Dtideover.write=true. -->\n";

    @Test
    void thePageOfSourcesIsUpToDate() throws IOException {
        String page = Files.readString(PAGE);
        assertThat(page).contains(MARK);
        String upper = page.substring(0, page.indexOf(MARK) + MARK.length());
        String written = upper + verifications() + comparisons();
        if (Boolean.getBoolean("tideover.write")) Files.writeString(PAGE, written);
        else assertThat(page).as("write it anew with -Dtideover.write=true").isEqualTo(written);
    }

    private static String verifications() throws IOException {
        StringBuilder page = new StringBuilder("\n## How far each table and rule book was verified\n\n| data |");
        for (Verification verification : Verification.values())
            page.append(' ').append(verification).append(" |");
        page.append("\n| --- |")
                .append(" --- |".repeat(Verification.values().length))
                .append('\n');
        for (String table : TableFiles.NAMES) row(page, "tables/" + table, verificationsOf(table));
        for (String book : RuleBooks.NAMES)
            row(
                    page,
                    "rules/%s.yaml, own limits".formatted(book),
                    RuleBooks.load(book).limits().stream()
                            .filter(limit -> limit.book().equals(book))
                            .map(Limit::source)
                            .map(source -> source.verification())
                            .toList());
        return page.toString();
    }

    private static void row(StringBuilder page, String data, List<Verification> verifications) {
        Map<Verification, Long> counts = verifications.stream()
                .collect(Collectors.groupingBy(
                        Function.identity(), () -> new EnumMap<>(Verification.class), Collectors.counting()));
        page.append("| ").append(data).append(" |");
        for (Verification verification : Verification.values())
            page.append(' ')
                    .append(counts.containsKey(verification) ? counts.get(verification) : "")
                    .append(" |");
        page.append('\n');
    }

    private static List<Verification> verificationsOf(String table) throws IOException {
        try (InputStream in = TableFiles.class.getResourceAsStream(table)) {
            return CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8)).stream()
                    .map(row -> Verification.valueOf(row.getField("verification")))
                    .toList();
        }
    }

    private static String comparisons() {
        StringBuilder page = new StringBuilder("\n## Published values and ours\n");
        Ours.UNITS.forEach((folder, unit) -> {
            page.append("\n### ").append(folder).append("\n\n");
            page.append("| given | published%s | ours | deviation | source | verification |\n"
                    .formatted(unit.isEmpty() ? "" : " [%s]".formatted(unit)));
            page.append("| --- | --- | --- | --- | --- | --- |\n");
            for (Published published : Published.read(folder)) {
                double ours = Ours.of(published);
                page.append("| %s | %s | %s | %s | %s | %s |\n"
                        .formatted(
                                published.given(),
                                published.text("published"),
                                rounded(ours),
                                deviation(published.number("published"), ours),
                                published.text("place"),
                                published.verification()));
            }
        });
        return page.toString();
    }

    /** Four digits that count. */
    private static String rounded(double value) {
        return new BigDecimal(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String deviation(double published, double ours) {
        double percent = 100 * (ours - published) / published;
        return Math.abs(percent) < 0.05 ? "0" : String.format(Locale.ROOT, "%+.1f %%", percent);
    }
}
