package tideover.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import tideover.engine.rules.Digest;

/**
 * A whole command from its start to its end, in a new process each round.
 *
 * @param aim     what the time should be [s]
 * @param command the command that is given the site file
 * @param output  where its results go
 */
record ColdStart(String name, String meaning, Aim aim, Program program, String command, Output output)
        implements Benchmark {

    /** Where the results of a command go. */
    enum Output {
        STANDARD_OUTPUT,
        FOLDER
    }

    private static final int ROUNDS = 9;

    @Override
    public String unit() {
        return "s";
    }

    @Override
    public Figure run(Path site) throws IOException {
        EditedSites sites = EditedSites.of(site);
        Path folder = Files.createTempDirectory("tideover-bench");
        try {
            ByteArrayOutputStream results = new ByteArrayOutputStream();
            List<Double> times = new ArrayList<>();
            // Round 0 is not counted: it brings the program's files into the memory of the machine.
            for (int round = 0; round <= ROUNDS; round++) {
                Files.writeString(folder.resolve("site.yaml"), sites.text(round));
                String written = "written-" + round;
                Program.Run run = program.run(folder, arguments(written));
                if (round > 0) times.add(run.timeS());
                results.write(
                        output == Output.FOLDER
                                ? contents(folder.resolve(written))
                                : run.output().getBytes(StandardCharsets.UTF_8));
            }
            String work = "%d starts on edits of %s".formatted(ROUNDS, sites.size());
            return Figure.of(times, work, Digest.of(results.toByteArray()).shortened());
        } finally {
            delete(folder);
        }
    }

    private List<String> arguments(String written) {
        return switch (output) {
            case STANDARD_OUTPUT -> List.of(command, "site.yaml");
            case FOLDER -> List.of(command, "site.yaml", "-o", written);
        };
    }

    private static byte[] contents(Path folder) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (Path file : files(folder)) {
            all.write(file.getFileName().toString().getBytes(StandardCharsets.UTF_8));
            // A document carries the day on which it was made; the same results stand beside it as data.
            if (!file.toString().endsWith(".pdf")) all.write(Files.readAllBytes(file));
        }
        return all.toByteArray();
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) Files.delete(path);
        }
    }
}
