package tideover.command.keeping;

import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.command.Desk;
import tideover.command.Status;
import tideover.command.kept.Keeping;
import tideover.engine.site.Site;
import tideover.files.SiteWriter;

/** Writes a kept site as a file, without loss. */
@Command(name = "export", resourceBundle = "tideover.command.help")
public final class ExportCommand extends KeptCommand {
    @Parameters(paramLabel = "SITE", arity = "1", descriptionKey = "keeping.site")
    private String site = "";

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            descriptionKey = "keeping.output")
    private @Nullable Path output;

    @Option(names = "--revision", paramLabel = "N", descriptionKey = "keeping.revision")
    private @Nullable Long revision;

    public ExportCommand(Desk desk) {
        super(desk);
    }

    @Override
    int work(Keeping keeping) {
        Site kept = keeping.site(require(keeping, site), revision);
        SiteWriter writer = new SiteWriter(desk.fields());
        boolean json =
                output != null && output.toString().toLowerCase(Locale.ROOT).endsWith(".json");
        String text = json ? writer.canonicalJson(kept) : writer.yaml(kept);
        if (output == null) {
            desk.out().print(text);
        } else {
            desk.write(output, text);
            desk.out().println(output);
        }
        return Status.DONE;
    }
}
