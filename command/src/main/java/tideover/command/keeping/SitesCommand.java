package tideover.command.keeping;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.command.Desk;
import tideover.command.Status;
import tideover.command.kept.Keeping;
import tideover.command.kept.KeptVariant;
import tideover.store.site.SiteSearch.Shelf;

/** Lists the kept sites. */
@Command(name = "sites", resourceBundle = "tideover.command.help")
public final class SitesCommand extends KeptCommand {
    @Parameters(paramLabel = "TEXT", arity = "0..*", descriptionKey = "keeping.text")
    private List<String> words = List.of();

    @Option(names = "--archived", descriptionKey = "keeping.archived")
    private boolean archived;

    public SitesCommand(Desk desk) {
        super(desk);
    }

    @Override
    int work(Keeping keeping) {
        List<KeptVariant> found = keeping.list(String.join(" ", words), archived ? Shelf.ARCHIVED : Shelf.IN_WORK);
        found.forEach(variant -> desk.out().println(line(variant)));
        if (found.isEmpty()) desk.say("keeping.none", folder().toString());
        return Status.DONE;
    }
}
