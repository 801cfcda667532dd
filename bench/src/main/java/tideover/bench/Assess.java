package tideover.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tideover.engine.assessment.Assessment;
import tideover.engine.assessment.Assessor;
import tideover.engine.rules.Digest;
import tideover.engine.rules.Finding;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.Site;
import tideover.files.tables.TableFiles;

/** From a changed site to its findings, warmed up: what one waits for after each edit. No calculations are kept. */
final class Assess implements Benchmark {

    private static final int WARM_UP = 15_000;
    private static final int ROUNDS = 19;
    private static final int SITES_PER_ROUND = 100;

    @Override
    public String name() {
        return "assess";
    }

    @Override
    public String meaning() {
        return "a changed site to its findings, warmed up";
    }

    @Override
    public String unit() {
        return "ms";
    }

    @Override
    public Aim aim() {
        return Aim.below(5);
    }

    @Override
    public Figure run(Path file) throws IOException {
        Site site = SiteFile.read(file);
        LongerCables edits = LongerCables.of(site);
        Assessor assessor = new Assessor(TableFiles.load());
        RuleBook rules = SiteFile.rules(site);
        for (int edit = 0; edit < WARM_UP; edit++) assessor.assessAtOnce(edits.site(edit), rules);

        List<Double> timesMs = new ArrayList<>();
        StringBuilder results = new StringBuilder();
        int findings = 0;
        for (int round = 0; round < ROUNDS; round++) {
            List<Site> sites = edits.sites(WARM_UP + round * SITES_PER_ROUND, SITES_PER_ROUND);
            List<Assessment> assessments = new ArrayList<>(SITES_PER_ROUND);
            long begin = System.nanoTime();
            for (Site edited : sites) assessments.add(assessor.assessAtOnce(edited, rules));
            timesMs.add((System.nanoTime() - begin) * 1e-6 / SITES_PER_ROUND);
            for (Assessment assessment : assessments) {
                for (Finding finding : assessment.findings())
                    results.append(finding.key()).append(finding.outcome()).append(finding.measure());
                findings = assessment.findings().size();
            }
        }
        String work = "%d edits, %s, %d findings each".formatted(ROUNDS * SITES_PER_ROUND, edits.size(), findings);
        return Figure.of(timesMs, work, Digest.of(results.toString()).shortened());
    }
}
