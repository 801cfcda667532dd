package tideover.web.start;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine;
import tideover.files.FieldTable;
import tideover.papers.Wording;

/** Where the workbench starts: {@code serve} and {@code demo}. */
public final class Main {
    /** Input that cannot be worked with, as for every command. */
    private static final int REFUSED = 2;

    /** The fault is ours. */
    private static final int OUR_FAULT = 3;

    private Main() {}

    /** Serves until it is told to stop; ends with the status of the command. */
    public static void main(String[] arguments) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        quietLibraries();
        int status = run(new ServeCommand(out, err), out, err, arguments);
        if (status != Serving.RUNNING) System.exit(status);
    }

    /** The libraries of the store would talk before the log is set up. */
    static void quietLibraries() {
        if (LoggerFactory.getILoggerFactory() instanceof LoggerContext logs)
            logs.getLogger(Logger.ROOT_LOGGER_NAME).setLevel(Level.WARN);
    }

    /** One sentence for the person; what we need to mend it goes to a file. */
    private static int fail(Exception trouble, PrintWriter err) {
        Wording words = Wording.of(Locale.ENGLISH, FieldTable.load());
        StringWriter trace = new StringWriter();
        trouble.printStackTrace(new PrintWriter(trace));
        try {
            Path log = Files.createTempFile("tideover-fault-", ".log");
            Files.writeString(log, trace.toString(), StandardCharsets.UTF_8);
            err.println(words.text("command.fault", log.toString()));
        } catch (IOException unwritable) {
            err.println(words.text("command.fault.noLog", trouble.getClass().getSimpleName()));
        }
        return OUR_FAULT;
    }

    static int run(ServeCommand command, PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine line = new CommandLine(command);
        line.setOut(out);
        line.setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setParameterExceptionHandler((trouble, args) -> {
            err.println(trouble.getMessage());
            return REFUSED;
        });
        line.setExecutionExceptionHandler((trouble, parsed, result) -> fail(trouble, err));
        return line.execute(arguments);
    }
}
