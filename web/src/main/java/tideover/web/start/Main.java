package tideover.web.start;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine;

/** Where the workbench starts: {@code serve} and {@code demo}. */
public final class Main {
    /** Input that cannot be worked with, as for every command. */
    private static final int REFUSED = 2;

    private Main() {}

    /** Serves until it is told to stop; ends with the status of the command. */
    public static void main(String[] arguments) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        quietLibraries();
        int status = run(out, err, arguments);
        if (status != Serving.RUNNING) System.exit(status);
    }

    /** The libraries of the store would talk before the log is set up. */
    static void quietLibraries() {
        if (LoggerFactory.getILoggerFactory() instanceof LoggerContext logs)
            logs.getLogger(Logger.ROOT_LOGGER_NAME).setLevel(Level.WARN);
    }

    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine line = new CommandLine(new ServeCommand(out, err));
        line.setOut(out);
        line.setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setParameterExceptionHandler((trouble, args) -> {
            err.println(trouble.getMessage());
            return REFUSED;
        });
        return line.execute(arguments);
    }
}
