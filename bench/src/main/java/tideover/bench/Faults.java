package tideover.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tideover.engine.assessment.Assessor;
import tideover.engine.assessment.Studies;
import tideover.engine.protection.Extreme;
import tideover.engine.protection.FaultCourse;
import tideover.engine.protection.FaultCourses;
import tideover.engine.protection.FaultKind;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.Circuit;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Site;
import tideover.files.tables.TableFiles;

/** From a changed site to all faults of all its circuits, told as stories, warmed up. */
final class Faults implements Benchmark {

    private static final int WARM_UP = 3_000;
    private static final int ROUNDS = 19;
    private static final int SITES_PER_ROUND = 50;

    @Override
    public String name() {
        return "faults";
    }

    @Override
    public String meaning() {
        return "a changed site to the stories of all faults of its circuits: four kinds, largest and smallest, both modes, "
                + "warmed up";
    }

    @Override
    public String unit() {
        return "ms";
    }

    @Override
    public Aim aim() {
        return Aim.below(3);
    }

    @Override
    public Figure run(Path file) throws IOException {
        Site site = SiteFile.read(file);
        LongerCables edits = LongerCables.of(site);
        Assessor assessor = new Assessor(TableFiles.load());
        RuleBook rules = SiteFile.rules(site);
        for (int edit = 0; edit < WARM_UP; edit++) tell(assessor.studies(edits.site(edit), rules));
        List<Double> timesMs = new ArrayList<>();
        Results results = new Results();
        int stories = 0;
        for (int round = 0; round < ROUNDS; round++) {
            List<Site> sites = edits.sites(WARM_UP + round * SITES_PER_ROUND, SITES_PER_ROUND);
            List<List<FaultCourse>> told = new ArrayList<>(SITES_PER_ROUND);
            long begin = System.nanoTime();
            for (Site edited : sites) told.add(tell(assessor.studies(edited, rules)));
            timesMs.add((System.nanoTime() - begin) * 1e-6 / SITES_PER_ROUND);
            for (List<FaultCourse> courses : told) courses.forEach(course -> add(course, results));
            stories = told.get(0).size();
        }
        String work = "%d edits, %s, %d stories each".formatted(ROUNDS * SITES_PER_ROUND, edits.size(), stories);
        return Figure.of(timesMs, work, results.digest());
    }

    private static List<FaultCourse> tell(Studies studies) {
        FaultCourses faults = studies.faults();
        if (faults == null) throw new IllegalStateException("the rule book of this country does not cover faults");
        List<FaultCourse> told = new ArrayList<>();
        for (OperatingState mode : Modes.of(studies))
            for (Circuit circuit : studies.installation().circuits())
                for (FaultKind kind : FaultKind.values())
                    for (Extreme extreme : Extreme.values())
                        told.addAll(faults.courses(kind, circuit, mode, extreme, 0));
        return told;
    }

    private static void add(FaultCourse course, Results results) {
        results.add("%s %s %s %s %s %s %s"
                .formatted(
                        course.kind(),
                        course.extreme(),
                        course.state(),
                        course.place(),
                        course.lines(),
                        course.clearing(),
                        course.dark()));
        results.add(course.currentA());
        results.add(course.touchVoltageV());
        results.add(course.voltageLeftV());
        results.add(course.linkA());
    }
}
