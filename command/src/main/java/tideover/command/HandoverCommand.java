package tideover.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.files.SiteFileResult;

/** Makes the papers of a site. */
@Command(name = "handover", resourceBundle = "tideover.command.help", mixinStandardHelpOptions = true)
final class HandoverCommand implements Callable<Integer> {

    private final Desk desk;

    @Parameters(paramLabel = "SITE", arity = "1")
    private Path site = Path.of("");

    @Option(
            names = {"-o", "--output"},
            paramLabel = "DIR",
            required = true)
    private Path output = Path.of("");

    @Option(names = "--rules", paramLabel = "FILE")
    private List<Path> rules = new ArrayList<>();

    HandoverCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        SiteFileResult.Readable file = desk.read(site);
        HandoverFolder folder = new HandoverFolder(desk, file, desk.rules(file.site(), rules));
        folder.write(output).forEach(desk.out()::println);
        return folder.requiredMet() ? Status.DONE : Status.NOT_MET;
    }
}
