package tideover.command;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Stands in the list of commands; the script hands it to the workbench, which has a class path of its own. */
@Command(name = "serve", resourceBundle = "tideover.command.help", mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {

    private final Desk desk;

    ServeCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        throw new Refusal(List.of(desk.sentence("serve.byScript")));
    }
}
