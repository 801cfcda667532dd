package tideover.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.engine.installation.Installation;
import tideover.engine.site.OperatingState;
import tideover.files.SiteFileResult;
import tideover.papers.diagram.Diagram;

/** Draws the one-line diagram of a site. */
@Command(name = "draw", resourceBundle = "tideover.command.help", mixinStandardHelpOptions = true)
final class DrawCommand implements Callable<Integer> {

    private final Desk desk;

    @Parameters(paramLabel = "SITE", arity = "1")
    private Path site = Path.of("");

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE.svg",
            required = true)
    private Path output = Path.of("");

    @Option(names = "--state", paramLabel = "STATE")
    private @Nullable OperatingState state;

    DrawCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        SiteFileResult.Readable file = desk.read(site);
        Installation installation = Installation.of(file.site());
        Diagram diagram = Diagram.of(installation, desk.wording().with(installation), desk.stamp(file));
        desk.write(output, state == null ? diagram.svg() : diagram.in(state).svg());
        desk.out().println(output);
        return Status.DONE;
    }
}
