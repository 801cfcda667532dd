package tideover.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import tideover.engine.assessment.Assessor;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.Circuit;
import tideover.engine.site.Site;
import tideover.engine.site.Thing;
import tideover.files.tables.TableFiles;

/** Houses that have nothing in common, from site to voltages in both modes, on two cores. */
final class Houses implements Benchmark {

    private static final int CORES = 2;
    private static final int WARM_UP_ROUNDS = 20;
    private static final int ROUNDS = 19;
    private static final int HOUSES_PER_ROUND = 1000;

    private final SplittableRandom random = new SplittableRandom(1);

    @Override
    public String name() {
        return "houses";
    }

    @Override
    public String meaning() {
        return "flows a second of different houses, each from its site to its voltages in both modes, on %d cores, warmed up"
                .formatted(CORES);
    }

    @Override
    public String unit() {
        return "/s";
    }

    @Override
    public Aim aim() {
        return Aim.above(5000);
    }

    @Override
    public Figure run(Path file) throws IOException {
        Site site = SiteFile.read(file);
        Assessor assessor = new Assessor(TableFiles.load());
        RuleBook rules = SiteFile.rules(site);
        ForkJoinPool cores = new ForkJoinPool(CORES);
        List<Double> perSecond = new ArrayList<>();
        Results results = new Results();
        for (int round = 0; round < WARM_UP_ROUNDS + ROUNDS; round++) {
            List<Site> sites = new ArrayList<>(HOUSES_PER_ROUND);
            for (int i = 0; i < HOUSES_PER_ROUND; i++) sites.add(another(site));
            long begin = System.nanoTime();
            List<List<HouseFlow>> flows = inParallel(cores, assessor, rules, sites);
            double timeS = (System.nanoTime() - begin) * 1e-9;
            if (round < WARM_UP_ROUNDS) continue;
            int flowsMade = flows.stream().mapToInt(List::size).sum();
            perSecond.add(flowsMade / timeS);
            for (List<HouseFlow> modes : flows)
                for (HouseFlow flow : modes) results.add(flow.house().network(), List.of(flow.flow()));
        }
        cores.shutdown();
        String work = "%d houses of %d places".formatted(ROUNDS * HOUSES_PER_ROUND, GrownHouse.places(site));
        return Figure.of(perSecond, work, results.digest());
    }

    private static List<List<HouseFlow>> inParallel(
            ForkJoinPool cores, Assessor assessor, RuleBook rules, List<Site> sites) {
        try {
            return cores.submit(() -> sites.parallelStream()
                            .map(site -> Modes.solve(assessor.studies(site, rules)))
                            .toList())
                    .get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while houses were computed", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a house could not be computed", e.getCause());
        }
    }

    /** The site with other cables and other loads everywhere. */
    private Site another(Site site) {
        Site other = site;
        for (Thing thing : site.planned().values()) {
            if (!(thing instanceof Circuit circuit)) continue;
            if (circuit.cable() != null && circuit.cable().lengthM() != null)
                other = other.with(
                        circuit.fact("cable.lengthM"), circuit.cable().lengthM() * random.nextDouble(0.5, 1.5));
            if (circuit.load() != null && circuit.load().powerW() != null)
                other = other.with(circuit.fact("load.powerW"), circuit.load().powerW() * random.nextDouble(0.5, 1));
        }
        return other;
    }
}
