package tideover.command.keeping;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import tideover.command.Desk;
import tideover.command.kept.Keeping;

/** Takes the last change of a kept site back. */
@Command(name = "undo", resourceBundle = "tideover.command.help")
public final class UndoCommand extends KeptCommand {
    @Parameters(paramLabel = "SITE", arity = "1", descriptionKey = "keeping.site")
    private String site = "";

    public UndoCommand(Desk desk) {
        super(desk);
    }

    @Override
    int work(Keeping keeping) {
        return tell(keeping.undo(require(keeping, site)));
    }
}
