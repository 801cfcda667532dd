package tideover.command.kept;

import java.nio.file.Path;
import java.time.Clock;
import tideover.command.Desk;
import tideover.store.ServingFile;
import tideover.store.Store;
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;

/** Finds out who owns a data folder. */
public final class DataOwner {
    private DataOwner() {}

    /**
     * This process where nobody owns the folder, else the workbench that does.
     *
     * @throws StoreRefusal where neither is to be had
     */
    public static Keeping open(Path folder, Desk desk) {
        try {
            return new OwnStore(Store.open(folder, desk.fields()), desk, Clock.systemUTC());
        } catch (StoreRefusal refusal) {
            if (refusal.reason() != Reason.IN_USE) throw refusal;
            return ServingFile.find(folder)
                    .<Keeping>map(serving -> new RunningWorkbench(serving, desk))
                    .orElseThrow(() -> refusal);
        }
    }
}
