package tideover.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tideover.engine.installation.Installation;
import tideover.engine.site.Site;
import tideover.engine.wiring.mistake.Coverage;
import tideover.engine.wiring.mistake.Mistake;
import tideover.engine.wiring.mistake.Mistakes;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.procedure.Procedure;
import tideover.engine.wiring.procedure.Run;
import tideover.engine.wiring.procedure.Step;

/** Every single wiring mistake of a house through every commissioning step, from a changed site. */
final class WiringMistakes implements Benchmark {

    /** Mistakes times steps until the program is warm: a small house takes more rounds for it than a large one. */
    private static final int WARM_UP_PAIRS = 8_000_000;

    private static final int ROUNDS = 11;

    @Override
    public String name() {
        return "wiring";
    }

    @Override
    public String meaning() {
        return "all single mistakes of a house run through all commissioning steps, for one mistake and step; netlist, "
                + "procedure and list of mistakes made anew each round, one core, warmed up";
    }

    @Override
    public String unit() {
        return "µs";
    }

    @Override
    public Aim aim() {
        return Aim.below(1);
    }

    @Override
    public Figure run(Path file) throws IOException {
        Site site = SiteFile.read(file);
        LongerCables edits = LongerCables.of(site);
        List<Double> timesUs = new ArrayList<>();
        Results results = new Results();
        String counts = "";
        double totalMs = 0;
        int warm = 0;
        for (int round = 0; timesUs.size() < ROUNDS; round++) {
            Site edited = edits.site(round);
            long begin = System.nanoTime();
            HouseModel model = HouseModel.of(Installation.of(edited));
            Run run = Run.of(Procedure.of(model));
            List<Mistake> mistakes = Mistakes.of(model);
            Coverage coverage = Coverage.of(run, mistakes);
            double timeUs = (System.nanoTime() - begin) * 1e-3;
            int steps = run.procedure().steps().size();
            if (mistakes.isEmpty() || steps == 0) throw new IllegalStateException("nothing here can form an island");
            if (warm < WARM_UP_PAIRS) {
                warm += mistakes.size() * steps;
                continue;
            }
            timesUs.add(timeUs / mistakes.size() / steps);
            totalMs += timeUs * 1e-3 / ROUNDS;
            counts = "%d mistakes, %d steps".formatted(mistakes.size(), steps);
            for (Mistake mistake : mistakes) {
                results.add(mistake.id());
                for (Step step : coverage.revealing(mistake)) results.add(step.id());
            }
        }
        return Figure.of(timesUs, "%d rounds of %s, %.0f ms each".formatted(ROUNDS, counts, totalMs), results.digest());
    }
}
