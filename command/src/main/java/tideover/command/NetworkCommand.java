package tideover.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.engine.assessment.StatePicture;
import tideover.engine.assessment.Studies;
import tideover.engine.installation.Installation;
import tideover.engine.network.house.Unsolved;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;
import tideover.files.SiteFileResult;
import tideover.papers.NetworkReport;
import tideover.papers.Wording;
import tideover.papers.json.NetworkAnswer;
import tideover.papers.json.NetworkJson;
import tideover.papers.json.NetworkTables;

/** Shows what flows in a house and what faults do, state by state. */
@Command(name = "network", resourceBundle = "tideover.command.help", mixinStandardHelpOptions = true)
final class NetworkCommand implements Callable<Integer> {

    private final Desk desk;

    @Parameters(paramLabel = "SITE", arity = "1")
    private Path site = Path.of("");

    @Option(names = "--state", paramLabel = "STATE")
    private @Nullable OperatingState state;

    @Option(names = "--at", paramLabel = "PLACE")
    private @Nullable String at;

    @Option(names = "--fault-resistance", paramLabel = "OHM")
    private double faultResistanceOhm;

    @Option(names = "--full")
    private boolean full;

    @Option(names = "--json")
    private boolean json;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "DIR")
    private @Nullable Path output;

    @Option(names = "--rules", paramLabel = "FILE")
    private List<Path> rules = new ArrayList<>();

    NetworkCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        if (!(faultResistanceOhm >= 0) || Double.isInfinite(faultResistanceOhm))
            throw new Refusal(List.of(desk.sentence("network.faultResistance", String.valueOf(faultResistanceOhm))));
        SiteFileResult.Readable file = desk.read(site);
        RuleBook book = desk.rules(file.site(), rules);
        Studies studies = desk.assessor().studies(file.site(), book);
        Wording wording = desk.wording().with(studies.installation());
        List<OperatingState> states = states(studies.installation(), wording);
        List<Fed> places = places(studies.installation());
        List<StatePicture> pictures = states.stream()
                .map(each -> StatePicture.of(studies, each, places, faultResistanceOhm))
                .toList();
        NetworkAnswer answer =
                new NetworkAnswer(wording, file.digest(), book, studies, pictures, places, faultResistanceOhm);
        if (json) desk.out().print(new NetworkJson(answer).text());
        if (output != null) write(output, answer);
        else if (!json) desk.out().print(new NetworkReport(wording, studies, book.layers(), length()).text(pictures));
        boolean unsolved = pictures.stream().anyMatch(picture -> picture.drawing() instanceof Unsolved);
        return unsolved ? Status.NOT_MET : Status.DONE;
    }

    private NetworkReport.Length length() {
        if (at != null) return NetworkReport.Length.PLACE;
        return full ? NetworkReport.Length.FULL : NetworkReport.Length.SHORT;
    }

    private void write(Path folder, NetworkAnswer answer) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("network.json", new NetworkJson(answer).text());
        NetworkTables tables = new NetworkTables(answer);
        files.put("nodes.csv", tables.nodes());
        files.put("branches.csv", tables.branches());
        files.put("faults.csv", tables.faults());
        files.forEach((name, text) -> {
            desk.write(folder.resolve(name), text);
            if (!json) desk.out().println(folder.resolve(name));
        });
    }

    private List<OperatingState> states(Installation installation, Wording wording) {
        if (state == null) return installation.states();
        if (installation.states().contains(state)) return List.of(state);
        List<String> known = installation.states().stream().map(Enum::name).toList();
        throw new Refusal(List.of(desk.sentence("network.noState", wording.word(state), String.join(", ", known))));
    }

    private List<Fed> places(Installation installation) {
        List<Fed> all = installation.all(Fed.class);
        if (at == null) return all;
        if (ThingId.isWellFormed(at)) {
            Fed place = installation.findFed(new ThingId(at)).orElse(null);
            if (place != null) return List.of(place);
        }
        // What is printed on the board may be typed too.
        List<Fed> named = all.stream()
                .filter(fed -> at.equalsIgnoreCase(fed.designation()))
                .toList();
        if (!named.isEmpty()) return named;
        List<String> known = all.stream().map(fed -> fed.id().text()).toList();
        throw new Refusal(List.of(desk.sentence("network.noPlace", at, String.join(", ", known))));
    }
}
