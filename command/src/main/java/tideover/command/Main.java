package tideover.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;

/** Where the program starts. */
public final class Main {

    private Main() {}

    /** Runs one command and ends with its status. */
    public static void main(String[] arguments) {
        PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, false, StandardCharsets.UTF_8);
        int status = new Tideover(out, err, LocalDate::now).run(arguments);
        out.flush();
        err.flush();
        System.exit(status);
    }
}
