package tideover.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** A {@link KilledWriter} in a process of its own. */
final class Child implements AutoCloseable {
    private final Process process;
    private final BufferedReader lines;

    private Child(Process process) {
        this.process = process;
        this.lines = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /**
     * Starts one.
     *
     * @param folder  whose store it writes into
     * @param scratch where it may leave what it would have tidied up
     * @param before  what is run in front of the program, such as a command that sets limits
     */
    static Child start(Path folder, Path scratch, long seed, String... before) {
        List<String> command = new ArrayList<>(List.of(before));
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-Xmx64m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xshare:auto"));
        command.addAll(List.of("-XX:-UsePerfData", "-Djava.io.tmpdir=" + scratch));
        command.addAll(
                List.of("-cp", System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))));
        command.addAll(List.of(KilledWriter.class.getName(), folder.toString(), Long.toString(seed)));
        try {
            return new Child(new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The next whole line it said, without the dot; nothing once it is gone. */
    @Nullable
    String line() {
        try {
            String line = lines.readLine();
            return line == null || !line.endsWith(" .") ? null : line.substring(0, line.length() - 2);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The next line, which must come. */
    String requireLine() {
        String line = line();
        if (line == null) throw new AssertionError("the process ended with " + waited());
        return line;
    }

    long pid() {
        return process.pid();
    }

    /** Kills it as {@code kill -9} does: it learns nothing of it. */
    void kill() {
        // Not the process itself: that would throw away what it had said and nobody had read yet.
        process.toHandle().destroyForcibly();
    }

    int waited() {
        try {
            if (!process.waitFor(60, TimeUnit.SECONDS)) throw new AssertionError("the process does not end");
            return process.exitValue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    @Override
    public void close() {
        kill();
        waited();
    }
}
