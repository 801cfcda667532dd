package tideover.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tideover.engine.assessment.Assessor;
import tideover.engine.network.flow.Flow;
import tideover.engine.network.flow.FlowResult;
import tideover.engine.network.flow.FourWireNetwork;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.HouseNetwork;
import tideover.engine.site.Site;
import tideover.files.tables.TableFiles;

/** Voltages and currents of one house with loads that change: both modes together, warmed up. */
final class Flows implements Benchmark {

    static final int PLACES = 60;

    private static final int WARM_UP = 20_000;
    private static final int ROUNDS = 19;
    private static final int LOADS_PER_ROUND = 200;

    @Override
    public String name() {
        return "flow";
    }

    @Override
    public String meaning() {
        return "new loads to voltages and currents, both modes of a house of %d places, warmed up".formatted(PLACES);
    }

    @Override
    public String unit() {
        return "ms";
    }

    @Override
    public Aim aim() {
        return Aim.below(0.15);
    }

    /** Both modes of a house grown to {@link #PLACES}. */
    static List<HouseNetwork> houses(Path file) throws IOException {
        Site site = GrownHouse.of(SiteFile.read(file), PLACES);
        Assessor assessor = new Assessor(TableFiles.load());
        return Modes.solve(assessor.studies(site, SiteFile.rules(site))).stream()
                .map(HouseFlow::house)
                .toList();
    }

    @Override
    public Figure run(Path file) throws IOException {
        List<FourWireNetwork> networks =
                houses(file).stream().map(HouseNetwork::network).toList();
        List<LoadChanges> changes = networks.stream().map(LoadChanges::new).toList();
        for (int i = 0; i < networks.size(); i++)
            solve(networks.get(i), changes.get(i).next(WARM_UP));
        List<Double> timesMs = new ArrayList<>();
        Results results = new Results();
        for (int round = 0; round < ROUNDS; round++) {
            double timeMs = 0;
            for (int i = 0; i < networks.size(); i++) {
                LoadChanges.Powers[] powers = changes.get(i).next(LOADS_PER_ROUND);
                long begin = System.nanoTime();
                List<Flow> flows = solve(networks.get(i), powers);
                timeMs += (System.nanoTime() - begin) * 1e-6 / LOADS_PER_ROUND;
                results.add(networks.get(i), flows);
            }
            timesMs.add(timeMs);
        }
        FourWireNetwork largest = networks.get(0);
        String work = "%d sets of %d loads in %d modes, %d places, %d points"
                .formatted(
                        ROUNDS * LOADS_PER_ROUND, largest.loadCount(), networks.size(), PLACES, largest.pointCount());
        return Figure.of(timesMs, work, results.digest());
    }

    static List<Flow> solve(FourWireNetwork network, LoadChanges.Powers[] powers) {
        List<Flow> flows = new ArrayList<>(powers.length);
        for (LoadChanges.Powers set : powers) {
            FlowResult result = network.withPowers(set.powerW, set.reactiveVar).solve();
            if (!(result instanceof Flow flow)) throw new IllegalStateException("no solution: " + result);
            // Currents of branches are worked out when the first is asked for.
            flow.currentA(0);
            flows.add(flow);
        }
        return flows;
    }
}
