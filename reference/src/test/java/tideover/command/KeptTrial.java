package tideover.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import tideover.files.FieldTable;
import tideover.store.Store;
import tideover.store.customer.CustomerFacts;

/** A data folder that nobody holds and one that a workbench holds, and the command line on either. */
abstract class KeptTrial {
    static final Path EXAMPLES = Path.of("..", "examples");

    @TempDir
    static Path folders;

    private static Process workbench;

    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();

    /** Who owns the data folder. */
    enum Owner {
        NOBODY,
        WORKBENCH;

        Path folder() {
            return folders.resolve(name());
        }
    }

    @BeforeAll
    static void startWorkbench() throws IOException {
        for (Owner owner : Owner.values())
            try (Store store = Store.open(owner.folder(), FieldTable.load())) {
                store.customers().create(CustomerFacts.named("Ada Beispiel"));
                store.customers().create(CustomerFacts.named("Ada Beispielhaft"));
            }
        List<String> command = List.of(
                ProcessHandle.current().info().command().orElse("java"),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                "tideover.web.start.Main",
                "serve",
                "--port",
                "0",
                "--data",
                Owner.WORKBENCH.folder().toString());
        workbench = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        BufferedReader said = workbench.inputReader(StandardCharsets.UTF_8);
        String line = said.readLine();
        if (line == null || !line.contains("http://127.0.0.1:")) fail("the workbench said " + line);
    }

    @AfterAll
    static void stopWorkbench() throws InterruptedException {
        workbench.destroy();
        assertThat(workbench.waitFor(20, TimeUnit.SECONDS))
                .as("it stops when told")
                .isTrue();
    }

    final int run(Owner owner, Object... arguments) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        List<String> words =
                new ArrayList<>(Stream.of(arguments).map(String::valueOf).toList());
        words.addAll(List.of("--data", owner.folder().toString()));
        return new Tideover(new PrintWriter(out, true), new PrintWriter(err, true), () -> LocalDate.EPOCH)
                .run(words.toArray(String[]::new));
    }

    /** Keeps the town house. @return its lasting name */
    final String importTownHouse(Owner owner) {
        assertThat(run(owner, "import", EXAMPLES.resolve("town-house.yaml"))).isZero();
        return out.toString().substring(0, 16);
    }
}
