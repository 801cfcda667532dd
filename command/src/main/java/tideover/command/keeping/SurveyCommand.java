package tideover.command.keeping;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.command.Desk;
import tideover.command.Status;
import tideover.command.kept.Keeping;
import tideover.engine.assessment.Assessment;
import tideover.engine.site.Site;

/** Tells which facts are still to be found out, what sets the price first. */
@Command(name = "survey", resourceBundle = "tideover.command.help")
public final class SurveyCommand extends DataCommand {
    @Parameters(paramLabel = "SITE", arity = "1", descriptionKey = "survey.site")
    private String named = "";

    @Option(names = "--json", descriptionKey = "survey.json")
    private boolean json;

    @Option(names = "--rules", paramLabel = "FILE")
    private List<Path> rules = new ArrayList<>();

    public SurveyCommand(Desk desk) {
        super(desk);
    }

    @Override
    int work() {
        Site site = site();
        Assessment assessment = desk.assessor().assess(site, desk.rules(site, rules));
        SurveyReport report = new SurveyReport(desk, site, assessment);
        desk.out().print(json ? report.json() : report.text());
        return Status.DONE;
    }

    /** That of the file, if there is one of this name, else the kept one. */
    private Site site() {
        Optional<Path> file = file();
        if (file.isPresent()) return desk.read(file.get()).site();
        try (Keeping keeping = open()) {
            return keeping.site(require(keeping, named), null);
        }
    }

    /** Also one that is missing, where the name can only be that of a file. */
    private Optional<Path> file() {
        try {
            Path path = Path.of(named);
            String small = named.toLowerCase(Locale.ROOT);
            boolean meant = named.contains(File.separator)
                    || small.endsWith(".yaml")
                    || small.endsWith(".yml")
                    || small.endsWith(".json");
            return meant || Files.exists(path) ? Optional.of(path) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
