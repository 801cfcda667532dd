package tideover.command.keeping;

import java.time.Clock;
import java.util.List;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.store.ServingFile;
import tideover.store.Store;
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;
import tideover.store.site.SiteSearch.Shelf;

/** What commands on kept sites have in common: whoever owns the data folder, and sites by their names. */
abstract class KeptCommand extends DataCommand {

    KeptCommand(Desk desk) {
        super(desk);
    }

    @Override
    final int work() {
        try (Keeping keeping = open()) {
            return work(keeping);
        }
    }

    /** Does what was asked for. @return the status to end with */
    abstract int work(Keeping keeping);

    private Keeping open() {
        try {
            return new OwnStore(Store.open(folder(), desk.fields()), desk, Clock.systemUTC());
        } catch (StoreRefusal refusal) {
            if (refusal.reason() != Reason.IN_USE) throw refusal;
            return ServingFile.find(folder())
                    .<Keeping>map(serving -> new RunningWorkbench(serving, desk))
                    .orElseThrow(() -> refusal);
        }
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

    /** Tells what came of a change. */
    final int tell(Saved saved) {
        String key = saved.kind() == Saved.Kind.SAVED ? "keeping.saved" : "keeping.unchanged";
        desk.out().println(desk.sentence(key, String.valueOf(saved.revision())));
        desk.out().println(saved.verdict());
        return 0;
    }
}
