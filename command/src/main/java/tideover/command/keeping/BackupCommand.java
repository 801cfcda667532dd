package tideover.command.keeping;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import tideover.command.Desk;
import tideover.command.Status;
import tideover.command.kept.Keeping;

/** Copies everything that is kept into one file, also while the workbench runs. */
@Command(name = "backup", resourceBundle = "tideover.command.help")
public final class BackupCommand extends KeptCommand {
    @Parameters(paramLabel = "FILE", arity = "1", descriptionKey = "keeping.backup")
    private Path file = Path.of("");

    public BackupCommand(Desk desk) {
        super(desk);
    }

    @Override
    int work(Keeping keeping) {
        keeping.backup(file.toAbsolutePath().normalize());
        desk.out().println(desk.sentence("keeping.backedUp", file.toString()));
        return Status.DONE;
    }
}
