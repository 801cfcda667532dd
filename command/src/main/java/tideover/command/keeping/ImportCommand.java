package tideover.command.keeping;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.command.Status;
import tideover.command.kept.Keeping;
import tideover.files.yaml.YamlText;

/** Keeps a site file as a new site. */
@Command(name = "import", resourceBundle = "tideover.command.help")
public final class ImportCommand extends KeptCommand {
    @Parameters(paramLabel = "FILE", arity = "1", descriptionKey = "keeping.file")
    private Path file = Path.of("");

    @Option(names = "--name", paramLabel = "VARIANT", descriptionKey = "keeping.name")
    private String name = "";

    public ImportCommand(Desk desk) {
        super(desk);
    }

    @Override
    int work(Keeping keeping) {
        String called = name.isBlank() ? desk.sentence("sites.firstVariant") : name;
        desk.out().println(line(keeping.bring(file.toString(), bytes(), called)));
        return Status.DONE;
    }

    private byte[] bytes() {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(YamlText.LARGEST_BYTES + 1);
        } catch (NoSuchFileException e) {
            throw new Refusal(List.of(desk.sentence("problem.fileMissing", file.toString())));
        } catch (IOException e) {
            String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
            throw new Refusal(List.of(desk.sentence("problem.fileUnreadable", file.toString(), why)));
        }
    }
}
