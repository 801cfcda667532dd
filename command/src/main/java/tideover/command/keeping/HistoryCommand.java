package tideover.command.keeping;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.command.Desk;
import tideover.command.Status;
import tideover.command.kept.Keeping;
import tideover.command.kept.KeptRevision;
import tideover.command.kept.KeptVariant;
import tideover.files.Edit;

/** Tells how a kept site became what it is, or what is different between two of its revisions. */
@Command(name = "history", resourceBundle = "tideover.command.help")
public final class HistoryCommand extends KeptCommand {
    @Parameters(paramLabel = "SITE", arity = "1", descriptionKey = "keeping.site")
    private String site = "";

    @Option(names = "--from", paramLabel = "N", descriptionKey = "keeping.from")
    private @Nullable Long from;

    @Option(names = "--to", paramLabel = "N", descriptionKey = "keeping.to")
    private @Nullable Long to;

    public HistoryCommand(Desk desk) {
        super(desk);
    }

    @Override
    int work(Keeping keeping) {
        KeptVariant variant = require(keeping, site);
        if (from == null && to == null) {
            keeping.revisions(variant).forEach(this::print);
        } else {
            long first = from == null ? 1 : from;
            print(keeping.difference(variant, first, to == null ? variant.revision() : to));
        }
        return Status.DONE;
    }

    private void print(KeptRevision revision) {
        String when = DateTimeFormatter.ISO_LOCAL_DATE_TIME
                .withZone(ZoneId.systemDefault())
                .format(revision.when().truncatedTo(ChronoUnit.SECONDS))
                .replace('T', ' ');
        desk.out()
                .println(desk.sentence(
                        "keeping.revision",
                        String.valueOf(revision.number()),
                        when,
                        desk.sentence("keeping.kind." + revision.kind().name()),
                        revision.who(),
                        revision.note().isEmpty() ? "" : " · " + revision.note()));
        print(revision.edits());
    }

    private void print(List<Edit> edits) {
        for (Edit edit : edits)
            desk.out()
                    .println(desk.sentence(
                            "keeping.change",
                            edit.path(),
                            edit.before() == null ? desk.sentence("keeping.nothing") : edit.before(),
                            edit.after() == null ? desk.sentence("keeping.nothing") : edit.after()));
    }
}
