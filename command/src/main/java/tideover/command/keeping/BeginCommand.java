package tideover.command.keeping;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.command.Status;
import tideover.command.kept.Keeping;
import tideover.command.kept.KeptVariant;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Origin;
import tideover.engine.site.Site;
import tideover.engine.site.SupplyLines;
import tideover.files.SiteFileResult;
import tideover.files.SiteWriter;
import tideover.files.first.FirstAnswers;
import tideover.files.first.FirstAnswers.SourceIs;
import tideover.files.first.FirstNumbers.Asked;
import tideover.files.first.FirstSite;
import tideover.files.tables.TypicalValues;

/** Makes a first plan from five answers about a house. */
@Command(name = "begin", resourceBundle = "tideover.command.help", sortOptions = false)
public final class BeginCommand extends DataCommand {
    @Option(names = "--designation", paramLabel = "NAME", descriptionKey = "begin.designation")
    private @Nullable String designation;

    @Option(names = "--country", paramLabel = "COUNTRY", descriptionKey = "begin.country")
    private @Nullable String country;

    @Option(names = "--said-by", paramLabel = "WHO", descriptionKey = "begin.saidBy")
    private String saidBy = "customer";

    @Option(names = "--earthing", paramLabel = "SYSTEM", descriptionKey = "begin.earthing")
    private @Nullable String earthing;

    @Option(names = "--lines", paramLabel = "N", descriptionKey = "begin.lines")
    private @Nullable String lines;

    @Option(names = "--main-fuse", paramLabel = "A", descriptionKey = "begin.mainFuse")
    private @Nullable String mainFuse;

    @Option(names = "--pv", paramLabel = "KW", descriptionKey = "begin.pv")
    private @Nullable String pv;

    @Option(names = "--battery", paramLabel = "KWH", descriptionKey = "begin.battery")
    private @Nullable String battery;

    @Option(names = "--inverter", paramLabel = "KVA", descriptionKey = "begin.inverter")
    private @Nullable String inverter;

    @Option(names = "--source", paramLabel = "WORD", descriptionKey = "begin.source")
    private String source = "planned";

    @Option(names = "--forms", paramLabel = "N", descriptionKey = "begin.forms")
    private String forms = "3";

    @Option(names = "--loads", paramLabel = "LOAD,…", descriptionKey = "begin.loads")
    private @Nullable String loads;

    @Option(names = "--stay-on", paramLabel = "LOAD,…", descriptionKey = "begin.stayOn")
    private @Nullable String stayOn;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            descriptionKey = "keeping.output")
    private @Nullable Path output;

    @Option(names = "--keep", descriptionKey = "begin.keep")
    private boolean keep;

    @Option(names = "--name", paramLabel = "VARIANT", descriptionKey = "keeping.name")
    private String name = "";

    public BeginCommand(Desk desk) {
        super(desk);
    }

    @Override
    int work() {
        TypicalValues typical = TypicalValues.load();
        Site site = begun(answers(typical), typical);
        SiteWriter writer = new SiteWriter(desk.fields());
        Path file = output;
        if (file != null) {
            boolean json = file.toString().toLowerCase(Locale.ROOT).endsWith(".json");
            desk.write(file, json ? writer.canonicalJson(site) : writer.yaml(site));
            desk.out().println(file);
        }
        if (keep) {
            String kept = keep(writer.canonicalJson(site));
            desk.out().println(desk.sentence("begin.next", kept));
        } else if (file != null) {
            desk.out().println(desk.sentence("begin.next", file.toString()));
        } else {
            desk.out().print(writer.yaml(site));
        }
        return Status.DONE;
    }

    private FirstAnswers answers(TypicalValues typical) {
        BeginAnswers said = new BeginAnswers(desk, typical);
        // In the order of the questions: what is missing is told so.
        String called = said.designation(designation);
        String where = said.country(country);
        Origin origin = said.origin(saidBy);
        EarthingSystem system = said.earthing(earthing);
        SupplyLines supplied = said.lines(lines);
        Double mainFuseA = said.number("--main-fuse", Asked.MAIN_FUSE, mainFuse);
        Double peakPowerW = said.number("--pv", Asked.PV, pv);
        Double usableEnergyWh = said.number("--battery", Asked.BATTERY, battery);
        Double ratedPowerVa = said.number("--inverter", Asked.INVERTER, inverter);
        SourceIs sourceIs = said.source(source);
        SupplyLines formed = said.forms(forms);
        List<String> there = said.loads("--loads", loads, BeginAnswers::isUsual);
        List<String> staying = said.loads("--stay-on", stayOn, load -> BeginAnswers.staysOn(load, there));
        said.refuseWhatIsWrong();
        return new FirstAnswers(
                called,
                where,
                origin,
                system,
                supplied,
                mainFuseA,
                there,
                staying,
                peakPowerW,
                usableEnergyWh,
                ratedPowerVa,
                sourceIs,
                formed);
    }

    private Site begun(FirstAnswers answers, TypicalValues typical) {
        UnaryOperator<String> names = id -> {
            boolean load = typical.loads().stream().anyMatch(one -> one.id().equals(id));
            return desk.sentence((load ? "first.load." : "first.part.") + id);
        };
        SiteFileResult result = new FirstSite(desk.fields(), typical, names).of(answers);
        if (result instanceof SiteFileResult.Readable readable) return readable.site();
        throw new Refusal(((SiteFileResult.Refused) result)
                .problems().stream()
                        .map(problem -> desk.wording().of(problem.phrase()))
                        .toList());
    }

    /** Keeps the site as a new one. @return its lasting name */
    private String keep(String json) {
        String called = name.isBlank() ? desk.sentence("sites.firstVariant") : name;
        try (Keeping keeping = open()) {
            KeptVariant kept = keeping.bring("", json.getBytes(StandardCharsets.UTF_8), called);
            desk.out().println(line(kept));
            return kept.variant();
        }
    }
}
