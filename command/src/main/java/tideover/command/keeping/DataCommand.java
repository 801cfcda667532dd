package tideover.command.keeping;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.command.kept.DataOwner;
import tideover.command.kept.Keeping;
import tideover.command.kept.KeptVariant;
import tideover.store.DataFolder;
import tideover.store.database.StoreRefusal;
import tideover.store.site.SiteSearch.Shelf;

/** A command on a data folder, with sites by their names; what the store refuses is a sentence. */
@Command(mixinStandardHelpOptions = true)
abstract class DataCommand implements Callable<Integer> {
    final Desk desk;

    @Option(names = "--data", paramLabel = "DIR", descriptionKey = "keeping.data")
    private @Nullable Path data;

    DataCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public final Integer call() {
        try {
            return work();
        } catch (StoreRefusal refusal) {
            throw new Refusal(List.of(desk.wording().of(refusal.phrase())));
        }
    }

    /** Does what was asked for. @return the status to end with */
    abstract int work();

    final Path folder() {
        return (data == null ? DataFolder.usual() : data).toAbsolutePath().normalize();
    }

    /** Whoever owns the data folder. */
    final Keeping open() {
        return DataOwner.open(folder(), desk);
    }

    /** The one variant that a person means: by its lasting name, else by what its site is called. */
    final KeptVariant require(Keeping keeping, String named) {
        KeptVariant byId = keeping.find(named).orElse(null);
        if (byId != null) return byId;
        List<KeptVariant> found = keeping.list(named, Shelf.BOTH);
        List<KeptVariant> exact = found.stream()
                .filter(variant -> variant.designation().equalsIgnoreCase(named.strip()))
                .toList();
        List<KeptVariant> meant = exact.isEmpty() ? found : exact;
        if (meant.size() == 1) return meant.get(0);
        if (meant.isEmpty()) throw new Refusal(List.of(desk.sentence("keeping.unknown", named)));
        StringBuilder all = new StringBuilder(desk.sentence("keeping.several", named));
        for (KeptVariant variant : meant) all.append(System.lineSeparator()).append(line(variant));
        throw new Refusal(List.of(all.toString()));
    }

    /** A variant in one line. */
    final String line(KeptVariant variant) {
        return desk.sentence(
                "keeping.variant",
                variant.variant(),
                variant.designation().isEmpty() ? desk.sentence("frame.unnamed") : variant.designation(),
                variant.name(),
                String.valueOf(variant.revision()));
    }
}
