package tideover.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import tideover.files.SiteSchema;

/** Prints the JSON Schema of site files. */
@Command(name = "schema", resourceBundle = "tideover.command.help", mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {

    private final Desk desk;

    SchemaCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        desk.out().print(SiteSchema.of(desk.fields()));
        return Status.DONE;
    }
}
