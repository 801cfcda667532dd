package tideover.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page that keeps the last recorded figure of each benchmark. */
final class PerformancePage {

    private static final Pattern ROW = Pattern.compile("\\| `([a-z0-9-]+)` \\|.*");

    private static final String HEAD = """
            # How fast it is

            Written by `./measure --record`. Each figure is the median of several rounds, none of which sees an input that
            an earlier one saw. The digest is of everything that came out: it changes
            only when results change.

            | benchmark | figure | aim | what is timed | how much work | digest of result | measured |
            | --- | ---: | ---: | --- | --- | --- | --- |
            """;

    private final Path file;
    private final Map<String, String> rows = new TreeMap<>();

    private PerformancePage(Path file) {
        this.file = file;
    }

    /** The page as it was written last; empty if there is none yet. */
    static PerformancePage read(Path file) throws IOException {
        PerformancePage page = new PerformancePage(file);
        if (Files.exists(file))
            for (String line : Files.readAllLines(file)) {
                Matcher row = ROW.matcher(line);
                if (row.matches()) page.rows.put(row.group(1), line);
            }
        return page;
    }

    void put(Benchmark benchmark, Figure figure, LocalDate day) {
        rows.put(
                benchmark.name(),
                String.format(
                        Locale.ROOT,
                        "| `%s` | %.3g %s | %s %s | %s | %s | `%s` | %s, %s |",
                        benchmark.name(),
                        figure.value(),
                        benchmark.unit(),
                        benchmark.aim(),
                        benchmark.unit(),
                        benchmark.meaning(),
                        figure.work(),
                        figure.digest(),
                        day,
                        machine()));
    }

    void write() throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.writeString(file, HEAD + String.join("\n", rows.values()) + "\n");
    }

    private static String machine() {
        return "%d cores, Java %s, %s"
                .formatted(
                        Runtime.getRuntime().availableProcessors(),
                        System.getProperty("java.version"),
                        System.getProperty("os.name"));
    }
}
