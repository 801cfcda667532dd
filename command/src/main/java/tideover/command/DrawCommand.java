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
import tideover.engine.installation.Installation;
import tideover.engine.protection.selectivity.TimeCurrentPath;
import tideover.engine.site.Circuit;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;
import tideover.files.SiteFileResult;
import tideover.papers.curves.CurveSheet;
import tideover.papers.diagram.Diagram;

/** Draws the one-line diagram of a site, or the time–current sheet of one of its circuits. */
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

    @Option(names = "--curves", paramLabel = "CIRCUIT")
    private @Nullable String curves;

    @Option(names = "--rules", paramLabel = "FILE")
    private List<Path> rules = new ArrayList<>();

    DrawCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        SiteFileResult.Readable file = desk.read(site);
        desk.write(output, curves == null ? diagram(file) : curves(file, curves));
        desk.out().println(output);
        return Status.DONE;
    }

    private String diagram(SiteFileResult.Readable file) {
        Installation installation = Installation.of(file.site());
        Diagram diagram = Diagram.of(installation, desk.wording().with(installation), desk.stamp(file));
        return state == null ? diagram.svg() : diagram.in(state).svg();
    }

    private String curves(SiteFileResult.Readable file, String id) {
        Assessor assessor = desk.assessor();
        Assessment assessment = assessor.assess(file.site(), desk.rules(file.site(), rules));
        Installation installation = assessment.installation();
        Circuit circuit = ThingId.isWellFormed(id)
                        && installation.findFed(new ThingId(id)).orElse(null) instanceof Circuit found
                ? found
                : null;
        if (circuit == null) throw refusal("draw.curves.noCircuit", id, circuits(installation));
        TimeCurrentPath path = assessor.curves(assessment).find(circuit).orElse(null);
        if (path == null) throw refusal("draw.curves.noDevice", id);
        return CurveSheet.of(path, assessment, desk.wording(), desk.stamp(file)).svg();
    }

    private static String circuits(Installation installation) {
        return String.join(
                ", ",
                installation.circuits().stream()
                        .map(circuit -> circuit.id().text())
                        .toList());
    }

    private Refusal refusal(String key, String... arguments) {
        return new Refusal(List.of(desk.sentence(key, arguments)));
    }
}
