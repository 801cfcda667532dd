package tideover.bench;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Circuit;
import tideover.engine.site.Site;
import tideover.engine.site.ThingId;
import tideover.files.FieldTable;
import tideover.files.SiteWriter;

/**
 * Edits of many sites in the workbench, sent as the sheet sends them and at the moments they are due, whether those before
 * are answered or not. Each answer brings the sheet with its margin, after the edit is durably kept. Then the page asks for
 * the slow findings, as it does in a browser: they are computed meanwhile, and are not waited for.
 */
final class WebEdits {
    private static final int SITES = 50;
    private static final int CIRCUITS = 40;
    private static final long PERIOD_NS = TimeUnit.SECONDS.toNanos(1) / 25;
    /** When the sheet asks for slow findings (margin.jte) [ms]. */
    private static final long ASKED_AFTER_MS = 120;

    private static final int WARM_UP = 25 * 15;
    private static final int ROUNDS = 3;
    private static final int EDITS = 25 * 20;

    private final Program program;
    private @Nullable Outcome outcome;

    /**
     * What came of the whole run.
     *
     * @param p95Ms      of each round, counted from the moment an edit was due [ms]
     * @param residentMb of the process afterwards [MB]
     * @param digest     of every site as it is kept afterwards
     */
    record Outcome(List<Double> p95Ms, OptionalDouble residentMb, String work, String digest) {
        Outcome {
            p95Ms = List.copyOf(p95Ms);
        }
    }

    WebEdits(Program program) {
        this.program = program;
    }

    /** The one run that both figures are taken from. */
    Outcome run(Path file) throws IOException {
        Outcome known = outcome;
        if (known == null) outcome = known = measure(file);
        return known;
    }

    /** One circuit of one site and the length its cable has now. */
    private static final class Cell {
        private final String variant;
        private final String circuit;
        private String length;

        private Cell(String variant, String circuit, String length) {
            this.variant = variant;
            this.circuit = circuit;
            this.length = length;
        }
    }

    private Outcome measure(Path file) throws IOException {
        Site site = withCircuits(SiteFile.read(file));
        List<String> circuits = new ArrayList<>();
        Map<String, String> lengths = new HashMap<>();
        for (Circuit circuit : circuits(site)) {
            if (circuit.cable() == null || circuit.cable().lengthM() == null) continue;
            circuits.add(circuit.id().text());
            lengths.put(circuit.id().text(), number(circuit.cable().lengthM()));
        }
        String text = new SiteWriter(FieldTable.load()).canonicalJson(site);
        try (WebDesk desk = WebDesk.start(program, Files.createTempDirectory("tideover-bench"))) {
            List<String> variants = new ArrayList<>();
            for (int i = 0; i < SITES; i++) variants.add(desk.importSite(text));
            List<Cell> cells = new ArrayList<>();
            for (String circuit : circuits)
                for (String variant : variants)
                    cells.add(new Cell(variant, circuit, lengths.getOrDefault(circuit, "")));
            int done = 0;
            send(desk, cells, done, WARM_UP);
            done += WARM_UP;
            List<Double> p95 = new ArrayList<>();
            for (int round = 0; round < ROUNDS; round++) {
                double[] tookMs = send(desk, cells, done, EDITS);
                done += EDITS;
                Arrays.sort(tookMs);
                p95.add(tookMs[(int) Math.ceil(0.95 * tookMs.length) - 1]);
            }
            OptionalDouble residentMb = desk.residentMb();
            Results results = new Results();
            for (String variant : variants) results.add(desk.site(variant));
            String work = "%d edits after %d, %d sites of %d circuits"
                    .formatted(ROUNDS * EDITS, WARM_UP, SITES, circuits(site).size());
            return new Outcome(p95, residentMb, work, results.digest());
        }
    }

    /** @return from the moment each was due to its answer [ms] */
    private static double[] send(WebDesk desk, List<Cell> cells, int first, int count) {
        double[] tookMs = new double[count];
        List<CompletableFuture<Void>> answers = new ArrayList<>();
        long begin = System.nanoTime();
        for (int i = 0; i < count; i++) {
            long due = begin + i * PERIOD_NS;
            while (System.nanoTime() < due) LockSupport.parkNanos(due - System.nanoTime());
            Cell cell = cells.get((first + i) % cells.size());
            String wanted = number(Double.parseDouble(cell.length) + 0.5);
            List<String> fields = List.of(
                    "base",
                    "1",
                    "side",
                    "plan",
                    "path",
                    "plan.%s.cable.lengthM".formatted(cell.circuit),
                    "was",
                    cell.length,
                    "typed",
                    wanted);
            int nth = i;
            answers.add(desk.post("/sites/%s/circuits".formatted(cell.variant), fields)
                    .thenAccept(answer -> {
                        tookMs[nth] = (System.nanoTime() - due) * 1e-6;
                        requireSaved(answer);
                        desk.askLater("/sites/%s/margin".formatted(cell.variant), ASKED_AFTER_MS);
                    }));
            cell.length = wanted;
        }
        CompletableFuture.allOf(answers.toArray(CompletableFuture[]::new)).join();
        return tookMs;
    }

    private static void requireSaved(HttpResponse<String> answer) {
        boolean saved = answer.statusCode() == 200
                && answer.body().contains("id=\"margin\"")
                && !answer.body().contains("td-problems");
        if (!saved)
            throw new IllegalStateException("an edit was answered with %d: %s"
                    .formatted(
                            answer.statusCode(),
                            answer.body()
                                    .substring(0, Math.min(600, answer.body().length()))));
    }

    /** A smaller site gets copies of its circuits until there are enough; a larger one stays as it is. */
    private static Site withCircuits(Site site) {
        List<Circuit> models = circuits(site);
        if (models.isEmpty()) throw new IllegalArgumentException("the site has no circuits that could be copied");
        Site grown = site;
        for (int i = 0; models.size() + i < CIRCUITS; i++) {
            Circuit model = models.get(i % models.size());
            grown = grown.withPlanned(GrownHouse.copy(model, new ThingId("copy-" + (i + 1)), model.fedFrom()));
        }
        return grown;
    }

    private static List<Circuit> circuits(Site site) {
        return site.planned().values().stream()
                .filter(Circuit.class::isInstance)
                .map(Circuit.class::cast)
                .toList();
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.endsWith(".00") ? text.substring(0, text.length() - 3) : text.replaceAll("0$", "");
    }
}
