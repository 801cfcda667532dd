package tideover.command.keeping;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import tideover.command.Desk;
import tideover.command.Status;
import tideover.store.Store;

/** Puts a backup in the place of what is kept, which stays beside it; the workbench must not run meanwhile. */
@Command(name = "restore", resourceBundle = "tideover.command.help")
public final class RestoreCommand extends DataCommand {
    @Parameters(paramLabel = "FILE", arity = "1", descriptionKey = "keeping.restore")
    private Path file = Path.of("");

    public RestoreCommand(Desk desk) {
        super(desk);
    }

    @Override
    int work() {
        Optional<Path> old =
                Store.restore(folder(), file, desk.fields(), Clock.systemUTC().instant());
        desk.out().println(desk.sentence("keeping.restored", file.toString()));
        old.ifPresent(kept -> desk.out().println(desk.sentence("keeping.oldKept", kept.toString())));
        return Status.DONE;
    }
}
