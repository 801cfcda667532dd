package tideover.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import tideover.engine.network.flow.Flow;
import tideover.engine.network.flow.FourWireNetwork;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.house.HouseNetwork;

/**
 * How many times as long OpenDSS takes for the flows of {@link Flows}: the same networks and sets of loads, to the same
 * residual. Its loop over the sets runs inside the library; voltages of both are compared first.
 *
 * @param python makes the environment that OpenDSS runs in
 */
record FlowRatio(PythonEnvironment python) implements Benchmark {

    private static final int ROUNDS = 19;
    private static final int SETS_PER_ROUND = 200;
    private static final int CHECKED = 20;
    private static final int WARM_UP = 20_000;

    /** Of the nominal voltage: the agreement without which times say nothing. */
    private static final double AGREEMENT_V = 1e-6 * 230;

    /**
     * OpenDSS stops when no voltage changes by more than this share of 230 V: at 20 A that is a residual of 1e-9 A, at
     * which ours stops.
     */
    private static final double TOLERANCE = 5e-11;

    @Override
    public String name() {
        return "flow-ratio";
    }

    @Override
    public String meaning() {
        return "time of OpenDSS over ours for new loads to voltages, both modes of a house of %d places"
                .formatted(Flows.PLACES);
    }

    @Override
    public String unit() {
        return "x";
    }

    @Override
    public Aim aim() {
        return Aim.above(10);
    }

    @Override
    public Measurement run(Path file) throws IOException {
        PythonEnvironment.Made made = python.make();
        if (made instanceof PythonEnvironment.Lacking lacking) return new NotMeasured(lacking.reason());
        Path executable = ((PythonEnvironment.Ready) made).executable();
        double[] oursUs = new double[ROUNDS];
        double[] theirsUs = new double[ROUNDS];
        double farthestV = 0;
        Results results = new Results();
        List<String> rounds = new ArrayList<>();
        List<HouseNetwork> houses = Flows.houses(file);
        for (HouseNetwork house : houses) {
            FourWireNetwork network = house.network();
            LoadChanges changes = new LoadChanges(network);
            Flows.solve(network, changes.next(WARM_UP));
            LoadChanges.Powers[] sets = changes.next((ROUNDS + 1) * SETS_PER_ROUND);
            List<Flow> flows = new ArrayList<>();
            for (int round = 0; round < ROUNDS; round++) {
                LoadChanges.Powers[] own = new LoadChanges.Powers[SETS_PER_ROUND];
                System.arraycopy(sets, round * SETS_PER_ROUND, own, 0, SETS_PER_ROUND);
                long begin = System.nanoTime();
                List<Flow> solved = Flows.solve(network, own);
                oursUs[round] += (System.nanoTime() - begin) * 1e-3 / SETS_PER_ROUND;
                flows.addAll(solved);
            }
            results.add(network, flows);
            DssCircuit circuit = new DssCircuit(house);
            Answer answer = ask(executable, circuit.text(sets));
            for (int i = 0; i < CHECKED; i++)
                farthestV = Math.max(farthestV, farthestV(network, circuit, flows.get(i), answer.voltsV.get(i)));
            for (int round = 0; round < ROUNDS; round++) theirsUs[round] += answer.timesUs.get(round);
            rounds.add("%d of %d".formatted(flows.get(0).iterations(), answer.iterations));
        }
        if (farthestV > AGREEMENT_V)
            return new NotMeasured(String.format(
                    Locale.ROOT, "OpenDSS and ours differ by %.3g V, more than rounding explains", farthestV));
        List<Double> ratios = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) ratios.add(theirsUs[round] / oursUs[round]);
        String work = String.format(
                Locale.ROOT,
                "%d sets of loads in %d modes, rounds ours and theirs %s, voltages within %.1g V",
                ROUNDS * SETS_PER_ROUND,
                houses.size(),
                String.join(", ", rounds).replace("of", "and"),
                farthestV);
        return Figure.of(ratios, work, results.digest());
    }

    /** What OpenDSS said. */
    private static final class Answer {
        final List<Map<String, Phasor>> voltsV = new ArrayList<>();
        final List<Double> timesUs = new ArrayList<>();
        int iterations;
    }

    private static Answer ask(Path executable, String circuit) throws IOException {
        Path folder = Files.createTempDirectory("tideover-bench");
        Path file = Files.writeString(folder.resolve("house.dss"), circuit);
        Path script = folder.resolve("flow_ratio.py");
        try (InputStream in = Objects.requireNonNull(FlowRatio.class.getResourceAsStream("flow_ratio.py"))) {
            Files.write(script, in.readAllBytes());
        }
        Process process = new ProcessBuilder(
                        executable.toString(),
                        script.toString(),
                        file.toString(),
                        Integer.toString(ROUNDS),
                        Integer.toString(SETS_PER_ROUND),
                        Integer.toString(CHECKED),
                        Double.toString(TOLERANCE))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        Answer answer = new Answer();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        output.lines().map(line -> line.split(" ")).forEach(words -> {
            if (words[0].equals("us")) answer.timesUs.add(Double.parseDouble(words[1]));
            else if (words[0].equals("iterations")) answer.iterations = Integer.parseInt(words[1]);
            else answer.voltsV.add(voltsV(words));
        });
        if (answer.timesUs.size() != ROUNDS)
            throw new IllegalStateException("OpenDSS did not answer as asked: " + file);
        for (Path done : List.of(file, script, folder)) Files.delete(done);
        return answer;
    }

    private static Map<String, Phasor> voltsV(String[] words) {
        Map<String, Phasor> volts = new HashMap<>();
        for (int i = 0; i + 2 < words.length; i += 3)
            volts.put(words[i], new Phasor(Double.parseDouble(words[i + 1]), Double.parseDouble(words[i + 2])));
        return volts;
    }

    private static double farthestV(
            FourWireNetwork network, DssCircuit circuit, Flow flow, Map<String, Phasor> theirsV) {
        double farthestV = 0;
        for (int point = 0; point < network.pointCount(); point++) {
            Phasor theirs = theirsV.get(circuit.node(point));
            if (theirs != null)
                farthestV =
                        Math.max(farthestV, flow.voltageV(point).minus(theirs).magnitude());
        }
        return farthestV;
    }
}
