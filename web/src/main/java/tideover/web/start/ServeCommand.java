package tideover.web.start;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.files.FieldTable;
import tideover.files.InputProblem;
import tideover.papers.Wording;
import tideover.store.DataFolder;
import tideover.store.Store;
import tideover.store.database.StoreRefusal;
import tideover.web.work.RulesByCountry;

/** Opens the store and serves it; of {@code demo}, with invented sites in a folder of its own. */
@Command(name = "tideover", resourceBundle = "tideover.web.help", mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {
    private static final int REFUSED = 2;

    /** What is served. */
    enum What {
        SERVE,
        DEMO
    }

    private final PrintWriter out;
    private final PrintWriter err;

    @Parameters(paramLabel = "serve|demo", arity = "1")
    private What what = What.SERVE;

    @Option(names = "--port", paramLabel = "N")
    private @Nullable Integer port;

    @Option(names = "--data", paramLabel = "DIR")
    private @Nullable Path data;

    @Option(names = "--rules", paramLabel = "FILE")
    private List<Path> rules = new ArrayList<>();

    @Option(names = "--examples", paramLabel = "DIR", hidden = true)
    private Path examples = Path.of(System.getProperty("tideover.examples", "examples"));

    private @Nullable Serving serving;

    ServeCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    /** The workbench, once it runs. */
    @Nullable
    Serving serving() {
        return serving;
    }

    @Override
    public Integer call() {
        Preparation preparation = Preparation.begin();
        FieldTable fields = FieldTable.load();
        Wording words = Wording.of(Locale.ENGLISH, fields);
        RulesByCountry own = new RulesByCountry(rules);
        List<InputProblem> problems = own.read();
        if (!problems.isEmpty()) {
            for (InputProblem problem : problems)
                err.println(words.at(problem.file(), problem.line(), problem.column(), words.of(problem.phrase())));
            return REFUSED;
        }
        Path folder = data != null ? data : what == What.DEMO ? Path.of("tideover-demo") : DataFolder.usual();
        try {
            return serve(folder.toAbsolutePath().normalize(), preparation, fields, own, words);
        } catch (StoreRefusal refusal) {
            err.println(words.of(refusal.phrase()));
            return REFUSED;
        }
    }

    private int serve(Path folder, Preparation preparation, FieldTable fields, RulesByCountry own, Wording words) {
        Store store;
        try {
            store = Store.open(folder, fields);
        } catch (StoreRefusal refusal) {
            String address = refusal.reason() == StoreRefusal.Reason.IN_USE ? Running.startAddress(folder) : null;
            if (address == null) throw refusal;
            out.println(words.text("serve.running", address));
            if (!rules.isEmpty()) out.println(words.text("serve.runningRules"));
            return 0;
        }
        try {
            String firstPage =
                    what == What.DEMO ? DemoSites.fill(store, examples, words.text("sites.firstVariant")) : "/";
            preparation.judgeLatest(store);
            Serving started = Serving.start(new Opened(store, folder, fields, own, preparation), port, firstPage);
            serving = started;
            out.println(words.text("serve.open", started.address()));
            out.println(words.of(Phrase.of("serve.folder", PhraseArg.verbatim(folder.toString()))));
            out.println(words.text("serve.stop"));
            return Serving.RUNNING;
        } catch (Serving.PortTaken taken) {
            store.close();
            err.println(words.text("serve.portTaken", Integer.toString(taken.port())));
            return REFUSED;
        }
    }
}
