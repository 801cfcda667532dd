package tideover.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The program as a user starts it: the start script, a new Java machine, and all.
 *
 * @param launcher the start script
 */
record Program(Path launcher) {

    /**
     * What one run took and gave.
     *
     * @param timeS  from the start of the process to its end [s]
     * @param output all of its standard output
     */
    record Run(double timeS, String output) {}

    /**
     * Runs it once.
     *
     * @param folder where it is started
     * @throws IllegalStateException if the program refuses its input or fails
     */
    Run run(Path folder, List<String> arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(arguments);
        long begin = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        process.getOutputStream().close();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int status = await(process);
        double timeS = (System.nanoTime() - begin) * 1e-9;
        // 0 and 1 are verdicts; more is refused input or a fault.
        if (status > 1) throw new IllegalStateException("%s ended with status %d".formatted(arguments, status));
        return new Run(timeS, output);
    }

    private static int await(Process process) {
        try {
            return process.waitFor();
        } catch (InterruptedException e) {
            process.destroy();
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while the program ran", e);
        }
    }
}
