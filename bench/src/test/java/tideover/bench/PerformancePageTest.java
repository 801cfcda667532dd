package tideover.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PerformancePageTest {

    @TempDir
    Path folder;

    @Test
    void aNewFigureReplacesItsOwnRowAndLeavesTheOthers() throws IOException {
        Path file = folder.resolve("docs/performance.md");
        record("first", 0.25, LocalDate.of(2026, 1, 2), file);
        record("second", 3, LocalDate.of(2026, 1, 3), file);
        record("first", 0.125, LocalDate.of(2026, 1, 4), file);

        assertThat(Files.readAllLines(file).stream().filter(line -> line.startsWith("| `")))
                .hasSize(2)
                .anyMatch(row -> row.startsWith("| `first` | 0.125 s | below 1 s |") && row.contains("2026-01-04"))
                .anyMatch(row -> row.startsWith("| `second` | 3.00 s |") && row.contains("2026-01-03"));
    }

    private static void record(String name, double valueS, LocalDate day, Path file) throws IOException {
        Benchmark benchmark = new ColdStart(
                name, "something", Aim.below(1), new Program(file), "check", ColdStart.Output.STANDARD_OUTPUT);
        PerformancePage page = PerformancePage.read(file);
        page.put(benchmark, new Figure(valueS, "one round", "abc"), day);
        page.write();
    }
}
