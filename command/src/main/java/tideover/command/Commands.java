package tideover.command;

import java.util.List;
import picocli.CommandLine;
import tideover.command.keeping.AttachmentsCommand;
import tideover.command.keeping.BackupCommand;
import tideover.command.keeping.BeginCommand;
import tideover.command.keeping.CustomersCommand;
import tideover.command.keeping.EditCommand;
import tideover.command.keeping.ExportCommand;
import tideover.command.keeping.ForgetCommand;
import tideover.command.keeping.HistoryCommand;
import tideover.command.keeping.ImportCommand;
import tideover.command.keeping.RedoCommand;
import tideover.command.keeping.RestoreCommand;
import tideover.command.keeping.SitesCommand;
import tideover.command.keeping.SurveyCommand;
import tideover.command.keeping.UndoCommand;

/** The commands, each with the desk it works at. */
final class Commands {

    /** In the order of the help. */
    private static final List<String> NAMES = List.of(
            "serve",
            "demo",
            "begin",
            "survey",
            "sites",
            "import",
            "export",
            "edit",
            "undo",
            "redo",
            "history",
            "attachments",
            "customers",
            "forget",
            "backup",
            "restore",
            "check",
            "draw",
            "handover",
            "letter",
            "network",
            "wiring",
            "diagnose",
            "circuits",
            "rules",
            "schema");

    private final Desk desk;

    Commands(Desk desk) {
        this.desk = desk;
    }

    /** Adds the command that is asked for; all of them where nobody can tell, as for help or a word misspelt. */
    void addTo(CommandLine line, String... arguments) {
        if (arguments.length > 0 && NAMES.contains(arguments[0])) line.addSubcommand(make(arguments[0]));
        else for (String name : NAMES) line.addSubcommand(make(name));
    }

    private Object make(String name) {
        // Neither a map nor reflection: a short run shall not load twenty commands for the sake of one.
        return switch (name) {
            case "serve" -> new ServeCommand(desk);
            case "demo" -> new DemoCommand(desk);
            case "begin" -> new BeginCommand(desk);
            case "sites" -> new SitesCommand(desk);
            case "import" -> new ImportCommand(desk);
            case "export" -> new ExportCommand(desk);
            case "edit" -> new EditCommand(desk);
            case "undo" -> new UndoCommand(desk);
            case "redo" -> new RedoCommand(desk);
            case "history" -> new HistoryCommand(desk);
            case "backup" -> new BackupCommand(desk);
            case "restore" -> new RestoreCommand(desk);
            case "customers" -> new CustomersCommand(desk);
            case "forget" -> new ForgetCommand(desk);
            case "attachments" -> new AttachmentsCommand(desk);
            case "survey" -> new SurveyCommand(desk);
            case "check" -> new CheckCommand(desk);
            case "draw" -> new DrawCommand(desk);
            case "handover" -> new HandoverCommand(desk);
            case "letter" -> new LetterCommand(desk);
            case "network" -> new NetworkCommand(desk);
            case "wiring" -> new WiringCommand(desk);
            case "diagnose" -> new DiagnoseCommand(desk);
            case "circuits" -> new CircuitsCommand(desk);
            case "rules" -> new RulesCommand(desk);
            case "schema" -> new SchemaCommand(desk);
            default -> throw new IllegalArgumentException("command '%s'".formatted(name));
        };
    }
}
