package tideover.command.keeping;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import tideover.command.Desk;
import tideover.command.kept.Keeping;

/** Makes a change anew that was taken back. */
@Command(name = "redo", resourceBundle = "tideover.command.help")
public final class RedoCommand extends KeptCommand {
    @Parameters(paramLabel = "SITE", arity = "1", descriptionKey = "keeping.site")
    private String site = "";

    public RedoCommand(Desk desk) {
        super(desk);
    }

    @Override
    int work(Keeping keeping) {
        return tell(keeping.redo(require(keeping, site)));
    }
}
