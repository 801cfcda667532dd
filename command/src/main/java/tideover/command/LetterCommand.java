package tideover.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.engine.assessment.Assessment;
import tideover.files.SiteFileResult;
import tideover.papers.handover.OperatorLetter;

/** Makes the letter to the grid operator with the questions that only it can answer. */
@Command(name = "letter", resourceBundle = "tideover.command.help", mixinStandardHelpOptions = true)
final class LetterCommand implements Callable<Integer> {

    private final Desk desk;

    @Parameters(paramLabel = "SITE", arity = "1")
    private Path site = Path.of("");

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE.pdf",
            required = true)
    private Path output = Path.of("");

    @Option(names = "--rules", paramLabel = "FILE")
    private List<Path> rules = new ArrayList<>();

    LetterCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        SiteFileResult.Readable file = desk.read(site);
        Assessment assessment = desk.assessor().assess(file.site(), desk.rules(file.site(), rules));
        desk.write(
                output,
                OperatorLetter.of(assessment, desk.wording(), desk.stamp(file)).pdf());
        desk.out().println(output);
        return Status.DONE;
    }
}
