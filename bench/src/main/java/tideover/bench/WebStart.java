package tideover.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.Digest;

/** How long a user waits for the first page of the workbench. */
record WebStart(Program program) implements Benchmark {
    private static final int ROUNDS = 7;

    @Override
    public String name() {
        return "web-start";
    }

    @Override
    public String meaning() {
        return "`./tideover serve` to its first page, whole process";
    }

    @Override
    public String unit() {
        return "s";
    }

    @Override
    public Aim aim() {
        return Aim.below(2);
    }

    @Override
    public Figure run(Path file) throws IOException {
        String text = Files.readString(file);
        Path folder = Files.createTempDirectory("tideover-bench");
        List<Double> times = new ArrayList<>();
        // Round 0 is not counted: it brings the program's files into the memory of the machine, and a site into the
        // store.
        for (int round = 0; round < ROUNDS; round++) {
            long begin = System.nanoTime();
            WebDesk desk = WebDesk.start(program, folder);
            try {
                if (round > 0) times.add((System.nanoTime() - begin) * 1e-9);
                else desk.importSite(text);
            } finally {
                desk.stop();
            }
        }
        WebDesk.start(program, folder).close();
        return Figure.of(times, "%d starts".formatted(ROUNDS), Digest.of(text).shortened());
    }
}
