package tideover.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.files.FieldTable;
import tideover.store.Store;
import tideover.store.site.Revision;
import tideover.store.site.VariantId;
import tideover.web.trial.Program;
import tideover.web.trial.ServedProcess;
import tools.jackson.databind.json.JsonMapper;

/** The whole workbench, killed while people and programs work with it: what was answered is kept. */
@Tag("slow")
class ServerKillTest {
    private static final FieldTable FIELDS = FieldTable.load();
    private static final int LIVES = 10;
    private static final int PROGRAMS = 3;
    private static final int LONGEST_LIFE_MILLIS = 1500;

    static {
        Main.quietLibraries();
    }

    @TempDir
    private Path folder;

    @Test
    void aWorkbenchKilledTenTimesLosesNothingItAnswered() throws Exception {
        // The moments differ from run to run, on purpose; the seed is printed with a failure.
        long seed = ThreadLocalRandom.current().nextLong();
        try {
            run(new Random(seed));
        } catch (AssertionError | RuntimeException | ExecutionException e) {
            throw new AssertionError("seed " + seed, e);
        }
    }

    private void run(Random random) throws Exception {
        Path data = folder.resolve("data");
        ServedProcess workbench = ServedProcess.open(data);
        ExecutorService threads = Executors.newCachedThreadPool();
        try {
            List<Worker> workers = workers(workbench.program(), random);
            for (int life = 0; life < LIVES; life++) {
                ServedProcess alive = workbench;
                List<Future<?>> works = new ArrayList<>();
                for (Worker worker : workers) works.add(threads.submit(() -> worker.workUntilKilled(alive)));
                Thread.sleep(random.nextInt(LONGEST_LIFE_MILLIS));
                workbench.kill();
                for (Future<?> work : works) work.get();
                workbench.close();
                // A copy, so that the next workbench is the first to open what the killed one left.
                Path copy = copy(data, life);
                Future<?> looked = threads.submit(() -> look(copy, workers));
                workbench = ServedProcess.open(data);
                looked.get();
                for (Worker worker : workers) worker.goOn(workbench);
            }
            // Far fewer would mean that the workbench was killed before anybody worked.
            assertThat(workers.stream().mapToInt(Worker::answered).sum()).isGreaterThan(LIVES * workers.size());
        } finally {
            threads.shutdownNow();
            workbench.close();
        }
    }

    private static List<Worker> workers(Program program, Random random) throws IOException {
        byte[] file = Files.readAllBytes(Path.of("..", "examples", "town-house.yaml"));
        List<Worker> workers = new ArrayList<>();
        for (int i = 0; i <= PROGRAMS; i++) {
            String head = Program.text(program.post("/api/sites", file));
            VariantId variant = new VariantId(
                    new JsonMapper().readTree(head).at("/variant/variant").asString());
            Hand hand = i < PROGRAMS ? new HandOfProgram(variant) : new HandOnSheet(variant);
            workers.add(new Worker(variant, hand, new Random(random.nextLong()), hand.value(program)));
        }
        return workers;
    }

    private static Path copy(Path data, int life) throws IOException {
        Path copy = Files.createDirectory(data.resolveSibling("copy" + life));
        try (Stream<Path> files = Files.list(data)) {
            for (Path file : files.toList())
                if (file.getFileName().toString().startsWith("tideover.db"))
                    Files.copy(file, copy.resolve(file.getFileName()));
        }
        return copy;
    }

    /** What the killed workbench left holds together, and everything answered is in it. */
    private static void look(Path data, List<Worker> workers) {
        try (Store store = Store.open(data, FIELDS)) {
            store.verify();
            for (Worker worker : workers) {
                List<Revision> revisions = store.sites().revisions(worker.variant());
                assertThat(revisions.stream().map(Revision::number).sorted())
                        .containsExactlyElementsOf(LongStream.rangeClosed(1, revisions.size())
                                .boxed()
                                .toList());
                worker.compare(store.sites());
            }
        }
    }
}
