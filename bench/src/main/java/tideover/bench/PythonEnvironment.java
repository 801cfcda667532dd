package tideover.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import tideover.engine.rules.Digest;

/**
 * A Python environment with the packages of the network cases' generating scripts, in the pinned versions; made once for
 * each set of pins.
 *
 * @param folder       below which it is made
 * @param requirements file with the pinned versions
 * @param packages     those of them that are wanted
 */
record PythonEnvironment(Path folder, Path requirements, List<String> packages) {

    /** Whether there is one. */
    sealed interface Made permits Ready, Lacking {}

    record Ready(Path executable) implements Made {}

    record Lacking(String reason) implements Made {}

    Made make() throws IOException {
        if (!Files.isReadable(requirements)) return new Lacking(requirements + " is missing, which pins the packages");
        String pins = Digest.of(Files.readString(requirements)).shortened();
        Path environment = folder.resolve("python-" + pins);
        Path executable = environment.resolve("bin/python");
        Path ready = environment.resolve("ready");
        if (Files.exists(ready)) return new Ready(executable);
        Files.createDirectories(folder);
        File log = folder.resolve("python.log").toFile();
        String named = System.getenv().getOrDefault("PYTHON", "python3");
        if (!runs(log, List.of(named, "-m", "venv", environment.toString())))
            return new Lacking("no Python 3 with its module venv; see " + log);
        List<String> install = new java.util.ArrayList<>(List.of(
                executable.toString(),
                "-m",
                "pip",
                "install",
                "--disable-pip-version-check",
                "--constraint",
                requirements.toString()));
        install.addAll(packages);
        if (!runs(log, install)) return new Lacking("the Python packages cannot be had; see " + log);
        Files.createFile(ready);
        return new Ready(executable);
    }

    private static boolean runs(File log, List<String> command) throws IOException {
        try {
            return new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.appendTo(log))
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            Files.writeString(log.toPath(), e.getMessage() + "\n");
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while Python packages were installed", e);
        }
    }
}
