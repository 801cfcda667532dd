package tideover.command.keeping;

import tideover.command.Desk;
import tideover.command.kept.Keeping;
import tideover.command.kept.Saved;

/** A command that does nothing without the data folder. */
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

    /** Tells what came of a change. */
    final int tell(Saved saved) {
        String key = saved.kind() == Saved.Kind.SAVED ? "keeping.saved" : "keeping.unchanged";
        desk.out().println(desk.sentence(key, String.valueOf(saved.revision())));
        desk.out().println(saved.verdict());
        return 0;
    }
}
