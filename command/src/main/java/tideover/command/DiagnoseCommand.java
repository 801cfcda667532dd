package tideover.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.engine.installation.Installation;
import tideover.engine.wiring.diagnosis.Observation;
import tideover.files.SiteFileResult;
import tideover.papers.diagnosis.DiagnosisLists;
import tideover.papers.diagnosis.DiagnosisLists.Length;
import tideover.papers.wiring.Listing;
import tideover.papers.wiring.ListingText;
import tideover.papers.wiring.WiringModel;

/** Finds the mistakes that fit what was seen, and what to read next. */
@Command(name = "diagnose", resourceBundle = "tideover.command.help", mixinStandardHelpOptions = true)
final class DiagnoseCommand implements Callable<Integer> {

    private final Desk desk;

    @Parameters(paramLabel = "SITE", arity = "1")
    private Path site = Path.of("");

    @Option(names = "--seen", paramLabel = "READING=VALUE")
    private List<String> seen = new ArrayList<>();

    @Option(names = "--list", arity = "0..1", fallbackValue = "", paramLabel = "WORD")
    private @Nullable String list;

    @Option(names = "--call", paramLabel = "TROUBLE")
    private @Nullable String call;

    @Option(names = "--answer", paramLabel = "yes|no", split = ",")
    private List<String> answers = new ArrayList<>();

    @Option(names = "--full")
    private boolean full;

    @Option(names = "--json")
    private boolean json;

    DiagnoseCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        if (seen.isEmpty() && list == null && call == null)
            throw new Refusal(List.of(desk.sentence("diagnosis.nothingAsked")));
        SiteFileResult.Readable file = desk.read(site);
        Installation installation = Installation.of(file.site());
        WiringModel model = new WiringModel(installation, desk.wording().with(installation));
        if (model.house().findLeader().isEmpty()) throw new Refusal(List.of(desk.sentence("diagnosis.noLeader")));
        if (call != null) {
            FaultCall tree = new FaultCall(desk, model, call, answers);
            desk.out().print(json ? tree.json(file.digest()) : tree.text());
            return Status.DONE;
        }
        if (list != null) {
            print(file, List.of(new DiagnosisLists(model).readings(list)));
            return Status.DONE;
        }
        List<Observation> observations = new Observations(desk, model).of(seen);
        print(file, new DiagnosisLists(model).of(observations, full || json ? Length.FULL : Length.SHORT));
        boolean isExplained = model.dictionary().isHealthy(observations)
                || !model.dictionary().explaining(observations).isEmpty();
        return isExplained ? Status.DONE : Status.NOT_MET;
    }

    private void print(SiteFileResult.Readable file, List<Listing> listings) {
        if (json) {
            desk.out().print(new DiagnoseJson(file.digest(), listings).text());
            return;
        }
        String between = "";
        for (Listing listing : listings) {
            if (listing.notes().isEmpty() && listing.size() == 0) continue;
            desk.out().print(between + ListingText.of(listing));
            between = "\n";
        }
    }
}
