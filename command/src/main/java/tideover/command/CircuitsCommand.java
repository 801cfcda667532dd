package tideover.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.engine.site.Site;
import tideover.files.EditResult;
import tideover.files.SiteEdits;
import tideover.files.SiteWriter;
import tideover.files.cells.CircuitCsv;
import tideover.files.cells.CircuitCsv.Listed;
import tideover.files.cells.CircuitCsvResult;
import tideover.files.yaml.YamlText;

/** Prints the circuit list as CSV, or makes a site as a list says. */
@Command(name = "circuits", resourceBundle = "tideover.command.help", mixinStandardHelpOptions = true)
final class CircuitsCommand implements Callable<Integer> {

    private final Desk desk;

    @Parameters(paramLabel = "SITE", arity = "1")
    private Path site = Path.of("");

    @Option(names = "--as", paramLabel = "FOUND|PLANNED|LAST")
    private Listed listed = Listed.LAST;

    @Option(names = "--apply", paramLabel = "FILE.csv")
    private @Nullable Path list;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE")
    private @Nullable Path output;

    CircuitsCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        Site before = desk.read(site).site();
        CircuitCsv csv = new CircuitCsv(desk.fields());
        String text = list == null ? csv.write(before, listed) : applied(csv, before, list);
        if (output == null) {
            desk.out().print(text);
            desk.out().flush();
        } else {
            desk.write(output, text);
            desk.out().println(output);
        }
        return Status.DONE;
    }

    private String applied(CircuitCsv csv, Site before, Path file) {
        CircuitCsvResult result = csv.read(before, listed, file.toString(), bytes(file));
        if (result instanceof CircuitCsvResult.Refused refused) throw desk.refusal(refused.problems());
        CircuitCsvResult.Read read = (CircuitCsvResult.Read) result;
        EditResult edited = new SiteEdits(desk.fields()).apply(before, read.edits());
        if (!(edited instanceof EditResult.Edited after))
            throw new IllegalStateException("edits of a list that was read do not apply: " + edited);
        int changed = read.edits().size() - read.added();
        desk.say("circuits.applied", String.valueOf(changed), String.valueOf(read.added()));
        return new SiteWriter(desk.fields()).yaml(after.site());
    }

    private byte[] bytes(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(YamlText.LARGEST_BYTES + 1);
        } catch (NoSuchFileException e) {
            throw new Refusal(List.of(desk.sentence("problem.fileMissing", file.toString())));
        } catch (IOException e) {
            throw new Refusal(List.of(desk.sentence("problem.fileUnreadable", file.toString(), reason(e))));
        }
    }

    private static String reason(IOException e) {
        String message = e.getMessage();
        return message == null ? e.getClass().getSimpleName() : message;
    }
}
