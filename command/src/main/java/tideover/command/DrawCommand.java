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
import tideover.papers.Wording;
import tideover.papers.curves.CurveSheet;
import tideover.papers.diagram.Diagram;
import tideover.papers.handover.TerminalPaper;
import tideover.papers.terminals.TerminalDrawing;
import tideover.papers.terminals.TerminalSheet;

/** Draws the one-line diagram of a site, the time–current sheet of one of its circuits, or its terminal drawing. */
@Command(name = "draw", resourceBundle = "tideover.command.help", mixinStandardHelpOptions = true)
final class DrawCommand implements Callable<Integer> {

    private final Desk desk;

    @Parameters(paramLabel = "SITE", arity = "1")
    private Path site = Path.of("");

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE.svg|DIR",
            required = true)
    private Path output = Path.of("");

    @Option(names = "--state", paramLabel = "STATE")
    private @Nullable OperatingState state;

    @Option(names = "--curves", paramLabel = "CIRCUIT")
    private @Nullable String curves;

    @Option(names = "--terminals")
    private boolean terminals;

    @Option(names = "--device", paramLabel = "DEVICE")
    private @Nullable String device;

    @Option(names = "--rules", paramLabel = "FILE")
    private List<Path> rules = new ArrayList<>();

    DrawCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        SiteFileResult.Readable file = desk.read(site);
        if (terminals || device != null) {
            write(terminals(file), file);
            return Status.DONE;
        }
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

    /** All devices, or the one asked for. */
    private TerminalDrawing terminals(SiteFileResult.Readable file) {
        TerminalDrawing all = desk.terminals(file);
        if (all.sheets().isEmpty()) throw refusal("terminals.none");
        if (device == null) return all;
        List<String> devices = all.devices().stream().map(ThingId::text).toList();
        if (devices.contains(device)) return all.only(new ThingId(device));
        throw refusal("terminals.noDevice", device, String.join(", ", devices));
    }

    private void write(TerminalDrawing drawing, SiteFileResult.Readable file) {
        Wording wording = desk.wording().with(Installation.of(file.site()));
        Path paper = output.resolve("terminals.pdf");
        desk.write(paper, new TerminalPaper(drawing, wording, desk.stamp(file)).pdf());
        desk.out().println(paper);
        for (TerminalSheet sheet : drawing.sheets()) {
            Path path = output.resolve("terminals-" + sheet.name() + ".svg");
            desk.write(path, sheet.svg());
            desk.out().println(path);
        }
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
