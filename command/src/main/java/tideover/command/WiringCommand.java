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
import tideover.engine.rules.RuleBook;
import tideover.engine.wiring.schedule.CuttingList;
import tideover.files.SiteFileResult;
import tideover.papers.handover.TerminalPaper;
import tideover.papers.handover.WiringPaper;
import tideover.papers.json.WiringJson;
import tideover.papers.wiring.Listing;
import tideover.papers.wiring.ListingCsv;
import tideover.papers.wiring.ListingText;
import tideover.papers.wiring.WiringData;
import tideover.papers.wiring.WiringPart;

/** Prints the wiring lists of a site. */
@Command(name = "wiring", resourceBundle = "tideover.command.help", mixinStandardHelpOptions = true)
final class WiringCommand implements Callable<Integer> {

    private final Desk desk;

    @Parameters(paramLabel = "SITE", arity = "1")
    private Path site = Path.of("");

    @Option(names = "--part", paramLabel = "PART", split = ",")
    private List<String> parts = new ArrayList<>();

    @Option(names = "--allowance", paramLabel = "METRES")
    private double allowanceM = CuttingList.USUAL_ALLOWANCE_M;

    @Option(names = "--json")
    private boolean json;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "DIR")
    private @Nullable Path output;

    @Option(names = "--rules", paramLabel = "FILE")
    private List<Path> rules = new ArrayList<>();

    WiringCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        if (!(allowanceM >= 0) || Double.isInfinite(allowanceM))
            throw new Refusal(List.of(desk.sentence("wiring.allowance", String.valueOf(allowanceM))));
        List<WiringPart> asked = asked();
        SiteFileResult.Readable file = desk.read(site);
        RuleBook book = desk.rules(file.site(), rules);
        WiringData wiring = desk.wiring(file.site(), book, allowanceM);
        List<Listing> listings =
                asked.stream().flatMap(part -> part.of(wiring).stream()).toList();
        WiringJson answer = new WiringJson(file.digest(), book, listings);
        if (json) desk.out().print(answer.text());
        if (output != null) write(output, listings, wiring, file, answer);
        else if (!json) print(listings, wiring);
        return Status.DONE;
    }

    private void print(List<Listing> listings, WiringData wiring) {
        String between = "";
        for (Listing listing : listings) {
            desk.out().print(between + ListingText.of(listing));
            between = "\n";
        }
        desk.out().print(ListingText.caution(wiring.wording()));
    }

    private void write(
            Path folder, List<Listing> listings, WiringData wiring, SiteFileResult.Readable file, WiringJson answer) {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("wiring.json", answer.text());
        for (Listing listing : listings) texts.put(listing.part() + ".csv", ListingCsv.of(listing));
        byte[] paper = new WiringPaper(listings, wiring.wording(), desk.stamp(file)).pdf();
        desk.write(folder.resolve("wiring.pdf"), paper);
        if (!json) desk.out().println(folder.resolve("wiring.pdf"));
        if (parts.isEmpty()) {
            Path drawing = folder.resolve("terminals.pdf");
            desk.write(drawing, new TerminalPaper(desk.terminals(file), wiring.wording(), desk.stamp(file)).pdf());
            if (!json) desk.out().println(drawing);
        }
        texts.forEach((name, text) -> {
            desk.write(folder.resolve(name), text);
            if (!json) desk.out().println(folder.resolve(name));
        });
    }

    private List<WiringPart> asked() {
        if (parts.isEmpty()) return WiringPart.USUAL;
        List<WiringPart> asked = new ArrayList<>();
        for (String name : parts)
            asked.add(WiringPart.ALL.stream()
                    .filter(part -> part.name().equalsIgnoreCase(name))
                    .findFirst()
                    .orElseThrow(() -> new Refusal(List.of(desk.sentence("wiring.noPart", name, names())))));
        return asked;
    }

    private static String names() {
        return String.join(", ", WiringPart.ALL.stream().map(WiringPart::name).toList());
    }
}
