package tideover.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Runs benchmarks and prints one line for each figure. */
public final class Measure {

    private final Path home;
    private final List<String> names = new ArrayList<>();
    private Path site;
    private Recording recording = Recording.OFF;

    private enum Recording {
        ON,
        OFF
    }

    private Measure(Path home) {
        this.home = home;
        this.site = home.resolve("examples/town-house.yaml");
    }

    /** Arguments: the project's folder, then those of {@code ./measure}. */
    public static void main(String[] arguments) throws IOException {
        Measure measure = new Measure(Path.of(arguments[0]));
        String trouble = measure.understand(List.of(arguments).subList(1, arguments.length));
        if (!trouble.isEmpty()) {
            System.err.println("measure: " + trouble);
            System.exit(2);
        }
        measure.run();
    }

    private List<Benchmark> all() {
        Program program = new Program(home.resolve("tideover"));
        WebEdits edits = new WebEdits(program);
        return List.of(
                new Assess(),
                new Flows(),
                new Houses(),
                new Faults(),
                new WiringMistakes(),
                new FlowRatio(new PythonEnvironment(
                        home.resolve("target"),
                        home.resolve("reference/src/test/resources/tideover/reference/network/requirements.txt"),
                        List.of("opendssdirect.py"))),
                new ColdStart(
                        "check-cold",
                        "`./tideover check`, whole process",
                        Aim.below(0.7),
                        program,
                        "check",
                        ColdStart.Output.STANDARD_OUTPUT),
                new ColdStart(
                        "handover-cold",
                        "`./tideover handover`, whole process",
                        Aim.below(4),
                        program,
                        "handover",
                        ColdStart.Output.FOLDER),
                new WebStart(program),
                new WebLatency(edits),
                new WebMemory(edits));
    }

    /** Takes the arguments in. @return what is wrong with them; empty if nothing is */
    private String understand(List<String> arguments) {
        String known = all().stream().map(Benchmark::name).collect(Collectors.joining(", "));
        for (int i = 0; i < arguments.size(); i++) {
            String argument = arguments.get(i);
            if (argument.equals("--record")) recording = Recording.ON;
            else if (argument.equals("--site")) {
                if (++i == arguments.size()) return "--site needs a site file after it";
                site = Path.of(arguments.get(i));
            } else if (all().stream().anyMatch(benchmark -> benchmark.name().equals(argument))) names.add(argument);
            else return "'%s' is not known; there are %s, --site FILE and --record".formatted(argument, known);
        }
        if (!Files.isReadable(site)) return site + " cannot be read; give a site file with --site FILE";
        return "";
    }

    private void run() throws IOException {
        PerformancePage page = PerformancePage.read(home.resolve("docs/performance.md"));
        for (Benchmark benchmark : all()) {
            if (!names.isEmpty() && !names.contains(benchmark.name())) continue;
            Measurement measured = benchmark.run(site);
            if (measured instanceof Figure figure) {
                print(
                        benchmark,
                        String.format(Locale.ROOT, "%.4g", figure.value()),
                        figure.work() + "  " + figure.digest());
                page.put(benchmark, figure, LocalDate.now(ZoneId.systemDefault()));
            } else if (measured instanceof NotMeasured not) {
                print(benchmark, "not measured", not.reason());
            }
        }
        if (recording == Recording.ON) page.write();
    }

    private static void print(Benchmark benchmark, String figure, String remark) {
        System.out.printf(
                Locale.ROOT,
                "%-16s %12s  %-3s  %-12s  %s%n",
                benchmark.name(),
                figure,
                benchmark.unit(),
                benchmark.aim(),
                remark);
    }
}
