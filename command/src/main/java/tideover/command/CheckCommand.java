package tideover.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.engine.assessment.Assessment;
import tideover.engine.assessment.Assessor;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.OperatingState;
import tideover.files.SiteFileResult;
import tideover.papers.CheckReport;
import tideover.papers.json.AssessmentJson;

/** Judges a site and prints its findings. */
@Command(name = "check", resourceBundle = "tideover.command.help", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {

    private final Desk desk;

    @Parameters(paramLabel = "SITE", arity = "1")
    private Path site = Path.of("");

    @Option(names = "--state", paramLabel = "STATE")
    private @Nullable OperatingState state;

    @Option(names = "--calculation")
    private boolean calculation;

    @Option(names = "--json")
    private boolean json;

    @Option(names = "--rules", paramLabel = "FILE")
    private List<Path> rules = new ArrayList<>();

    CheckCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        SiteFileResult.Readable file = desk.read(site);
        RuleBook book = desk.rules(file.site(), rules);
        Assessor assessor = desk.assessor();
        Assessment whole = calculation ? assessor.explain(file.site(), book) : assessor.assess(file.site(), book);
        Assessment shown = state == null ? whole : whole.in(state);
        if (json) desk.out().print(new AssessmentJson(desk.wording(), shown, file.digest()).text());
        else desk.out().print(new CheckReport(desk.wording(), shown).text());
        return shown.requiredMet() ? Status.DONE : Status.NOT_MET;
    }
}
