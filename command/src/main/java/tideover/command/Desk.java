package tideover.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import tideover.engine.assessment.Assessor;
import tideover.engine.assessment.FindingChange;
import tideover.engine.installation.Installation;
import tideover.engine.protection.Tables;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.Site;
import tideover.engine.wiring.schedule.CuttingList;
import tideover.files.FieldTable;
import tideover.files.InputProblem;
import tideover.files.SiteFileResult;
import tideover.files.SiteFiles;
import tideover.files.rules.RuleBookResult;
import tideover.files.rules.RuleBooks;
import tideover.files.tables.TableFiles;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.terminals.TerminalDrawing;
import tideover.papers.wiring.WiringData;

/** What every command works with: streams, the day, wording, and readers that refuse with sentences. */
public final class Desk {

    private final PrintWriter out;
    private final PrintWriter err;
    private final Supplier<LocalDate> today;
    private final FutureTask<Tables> tables = new FutureTask<>(TableFiles::load);
    private @Nullable FieldTable fields;
    private @Nullable Wording wording;

    Desk(PrintWriter out, PrintWriter err, Supplier<LocalDate> today) {
        this.out = out;
        this.err = err;
        this.today = today;
    }

    public PrintWriter out() {
        return out;
    }

    public PrintWriter err() {
        return err;
    }

    public FieldTable fields() {
        FieldTable table = fields;
        if (table == null) fields = table = FieldTable.load();
        return table;
    }

    public Wording wording() {
        Wording english = wording;
        if (english == null) wording = english = Wording.of(Locale.ENGLISH, fields());
        return english;
    }

    /** A sentence of the bundles. */
    public String sentence(String key, String... arguments) {
        return wording()
                .of(new Phrase(
                        key,
                        List.of(arguments).stream().map(PhraseArg::verbatim).toList()));
    }

    /** Prints a sentence where problems go. */
    public void say(String key, String... arguments) {
        err.println(sentence(key, arguments));
    }

    /** Judges with the tables of the standards. */
    public Assessor assessor() {
        // Loads them here where nobody began to.
        tables.run();
        try {
            return new Assessor(tables.get());
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException("the tables of the standards cannot be loaded", e);
        }
    }

    /** Loads the tables on a thread of their own: while a site file is read, the second core has nothing else to do. */
    private void startLoadingTables() {
        Thread thread = new Thread(tables, "tables");
        thread.setDaemon(true);
        thread.start();
    }

    /** Reads a site file. @throws Refusal with all of its problems */
    public SiteFileResult.Readable read(Path file) {
        startLoadingTables();
        SiteFileResult result = new SiteFiles(fields()).read(file);
        if (result instanceof SiteFileResult.Readable readable) return readable;
        throw refusal(((SiteFileResult.Refused) result).problems());
    }

    /** The rule book of a site's country with the user's own over it. @throws Refusal with all of their problems */
    public RuleBook rules(Site site, List<Path> own) {
        String country = site.house().place().country();
        return rules(country == null ? "" : country, own);
    }

    /** The rule book of a country, or a book by its name, with others over it. @throws Refusal with their problems */
    RuleBook rules(String country, List<Path> over) {
        RuleBookResult result = RuleBooks.read(country, over);
        if (result instanceof RuleBookResult.Readable readable) return readable.rules();
        throw refusal(((RuleBookResult.Refused) result).problems());
    }

    /**
     * The wiring lists of a site. Where something was built otherwise than planned, it is judged both ways.
     *
     * @param allowanceM what each piece of cable or wire is cut longer [m]
     */
    WiringData wiring(Site site, RuleBook rules, double allowanceM) {
        List<FindingChange> changes = site.built().isAsPlanned()
                ? List.of()
                : FindingChange.between(
                        assessor().assess(site.asPlanned(), rules), assessor().assess(site, rules));
        return WiringData.of(Installation.of(site), TableFiles.wiring(), changes, wording(), allowanceM);
    }

    /** The terminal drawing of a site. */
    TerminalDrawing terminals(SiteFileResult.Readable file) {
        WiringData wiring = WiringData.of(
                Installation.of(file.site()), TableFiles.wiring(), List.of(), wording(), CuttingList.USUAL_ALLOWANCE_M);
        return TerminalDrawing.of(
                wiring.installation(),
                wiring.net(),
                wiring.schedules().power(),
                wiring.schedules().control(),
                wiring.wording(),
                stamp(file));
    }

    /** What papers bear. */
    Stamp stamp(SiteFileResult.Readable file) {
        return new Stamp(file.digest(), today.get());
    }

    /** What stands in the way, as sentences. */
    public Refusal refusal(List<InputProblem> problems) {
        return new Refusal(problems.stream().map(this::sentence).toList());
    }

    private String sentence(InputProblem problem) {
        String what = wording().of(problem.phrase());
        return wording().at(problem.file(), problem.line(), problem.column(), what);
    }

    /** Writes a file whole or not at all. @throws Refusal if it cannot be written */
    public void write(Path file, byte[] bytes) {
        Path folder = file.toAbsolutePath().getParent();
        try {
            if (folder != null) Files.createDirectories(folder);
            Path unfinished = file.resolveSibling(
                    "." + file.getFileName() + "." + ProcessHandle.current().pid());
            try {
                Files.write(unfinished, bytes);
                Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(unfinished);
            }
        } catch (IOException e) {
            throw new Refusal(List.of(sentence("command.unwritable", file.toString())));
        }
    }

    /** Writes a text file in UTF-8, whole or not at all. */
    public void write(Path file, String text) {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }
}
