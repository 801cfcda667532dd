package tideover.command.keeping;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.store.DataFolder;
import tideover.store.database.StoreRefusal;

/** A command on a data folder; what the store refuses is a sentence. */
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
}
