package tideover.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program with its commands. */
@Command(
        name = "tideover",
        resourceBundle = "tideover.command.help",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class Tideover implements Runnable {

    private final Desk desk;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    Tideover(PrintWriter out, PrintWriter err, Supplier<LocalDate> today) {
        this.desk = new Desk(out, err, today);
    }

    /** Runs one command. @return the status to end with */
    int run(String... arguments) {
        CommandLine line = new CommandLine(this);
        new Commands(desk).addTo(line, arguments);
        line.setOut(desk.out())
                .setErr(desk.err())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setUsageHelpAutoWidth(false)
                .setParameterExceptionHandler((problem, given) -> refuse(problem))
                .setExecutionExceptionHandler((problem, given, result) -> fail(problem));
        try {
            return line.execute(arguments);
        } catch (Error e) {
            // Such as memory that ran out or a jar that is missing: the command line's own handler lets these pass.
            return fail(e);
        }
    }

    @Override
    public void run() {
        spec.commandLine().usage(desk.out());
    }

    private int refuse(ParameterException problem) {
        CommandLine line = problem.getCommandLine();
        desk.err().println(problem.getMessage());
        if (!UnmatchedArgumentException.printSuggestions(problem, desk.err()))
            desk.say("command.help", line.getCommandSpec().qualifiedName());
        return Status.REFUSED;
    }

    /** One sentence for the person; what we need to mend it goes to a file. */
    private int fail(Throwable problem) {
        if (problem instanceof Refusal refusal) {
            refusal.sentences().forEach(desk.err()::println);
            return Status.REFUSED;
        }
        StringWriter trace = new StringWriter();
        problem.printStackTrace(new PrintWriter(trace));
        try {
            Path log = Files.createTempFile("tideover-fault-", ".log");
            Files.writeString(log, trace.toString(), StandardCharsets.UTF_8);
            desk.say("command.fault", log.toString());
        } catch (IOException unwritable) {
            desk.say("command.fault.noLog", problem.getClass().getSimpleName());
        }
        return Status.OUR_FAULT;
    }
}
