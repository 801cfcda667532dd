package tideover.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.RuleBook;
import tideover.files.SiteFileResult;
import tideover.papers.CheckReport;

/** Judges the town house, an invented site, and makes its papers; without {@code --papers} it is the workbench that opens. */
@Command(name = "demo", resourceBundle = "tideover.command.help", mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {

    private final Desk desk;

    @Option(names = "--papers")
    private boolean papers;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "DIR")
    private Path output = Path.of("tideover-demo");

    @Option(names = "--examples", paramLabel = "DIR", hidden = true)
    private Path examples = Path.of(System.getProperty("tideover.examples", "examples"));

    DemoCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        if (!papers) throw new Refusal(List.of(desk.sentence("serve.byScript")));
        Path site = examples.resolve("town-house.yaml");
        SiteFileResult.Readable file = desk.read(site);
        RuleBook rules = desk.rules(file.site(), List.of());
        Assessment assessment = desk.assessor().assess(file.site(), rules);
        desk.out().println(desk.sentence("demo.site", site.toString()));
        desk.out().println();
        desk.out().print(new CheckReport(desk.wording(), assessment).text());
        desk.out().println();
        desk.out().println(desk.sentence("demo.papers"));
        HandoverFolder folder = new HandoverFolder(desk, file, rules);
        folder.write(output).forEach(path -> desk.out().println("  " + path));
        desk.out().println();
        desk.out()
                .println(desk.sentence("demo.next", examples.resolve("troubled").toString()));
        return folder.requiredMet() ? Status.DONE : Status.NOT_MET;
    }
}
