package tideover.web.trial;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Page;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.store.ServingFile;
import tools.jackson.databind.json.JsonMapper;

/** The workbench in a process of its own, as {@code tideover serve} starts it; it can be stopped, killed and limited. */
public final class ServedProcess implements Asked, AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:[0-9]+/enter\\?token=\\S+");
    private static final int PATIENCE_S = 60;

    private final Path folder;
    private final Process process;
    private final Said out;
    private final Said err;
    private @Nullable ServingFile serving;

    private ServedProcess(Path folder, Process process) {
        this.folder = folder;
        this.process = process;
        this.out = new Said(process.inputReader(StandardCharsets.UTF_8));
        this.err = new Said(process.errorReader(StandardCharsets.UTF_8));
    }

    /**
     * Starts it without waiting for anything.
     *
     * @param folder  of the data
     * @param scratch where a killed process may leave what it would have tidied up
     * @param before  what is run in front of the program, such as a command that takes rights away
     */
    public static ServedProcess launch(Path folder, Path scratch, String... before) {
        List<String> command = new ArrayList<>(List.of(before));
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-Xmx256m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xshare:auto"));
        command.addAll(List.of("-XX:-UsePerfData", "-Djava.awt.headless=true", "-Dfile.encoding=UTF-8"));
        // The store's library is native, of which newer JDKs want to be told.
        if (Runtime.version().feature() >= 22) command.add("--enable-native-access=ALL-UNNAMED");
        try {
            command.add("-Djava.io.tmpdir=" + Files.createDirectories(scratch));
            command.add("-cp");
            command.add(System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
            command.addAll(List.of("tideover.web.start.Main", "serve", "--data", folder.toString()));
            ProcessBuilder builder = new ProcessBuilder(command);
            builder.environment().remove("JAVA_TOOL_OPTIONS");
            return new ServedProcess(folder, builder.start());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Starts it without waiting for anything; what it may leave behind lies beside the folder. */
    public static ServedProcess launch(Path folder) {
        return launch(folder, folder.resolveSibling("scratch"));
    }

    /** Starts it and waits until it is open. */
    public static ServedProcess open(Path folder) {
        ServedProcess started = launch(folder);
        if (started.out.address() == null) {
            started.close();
            throw new AssertionError("it did not open: " + started.said());
        }
        return started;
    }

    /** The start address it printed; nothing where it ended without. */
    public @Nullable String printedAddress() {
        return out.address();
    }

    @Override
    public String at(String path) {
        return "http://127.0.0.1:" + serving().port() + path;
    }

    @Override
    public String startAddress() {
        String answer = Program.text(program().post("/api/start-addresses", ""));
        return new JsonMapper().readTree(answer).path("address").asString();
    }

    @Override
    public String key() {
        return serving().key();
    }

    /** Where it listens. */
    public int port() {
        return serving().port();
    }

    /** What it wrote when it opened; it stays true where the folder goes away. */
    private ServingFile serving() {
        if (serving == null) serving = ServingFile.find(folder).orElseThrow();
        return serving;
    }

    /** A program that has the key. */
    public Program program() {
        return new Program(this);
    }

    /** Somebody who was let in, without a browser. */
    public Visitor visitor() {
        return Visitor.letIn(this);
    }

    /** Somebody who has neither cookie nor key. */
    public Visitor stranger() {
        return Visitor.outside(this);
    }

    /** A window of the browser that is let in; whoever asks for it closes its context. */
    public Page page() {
        Page page = Chromium.window(new NewContextOptions().setLocale("en-GB")).newPage();
        page.navigate(startAddress());
        return page;
    }

    /** Lets none of its files grow beyond this many bytes; {@code unlimited} takes that back. */
    public void limitFiles(String bytes) {
        String limit = bytes.equals("unlimited") ? bytes : bytes + ":unlimited";
        try {
            Process limiting = new ProcessBuilder("prlimit", "--pid", Long.toString(process.pid()), "--fsize=" + limit)
                    .inheritIO()
                    .start();
            if (limiting.waitFor() != 0) throw new AssertionError("prlimit failed");
        } catch (IOException e) {
            throw new AssertionError("prlimit, of util-linux, is missing", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    /** Kills it as {@code kill -9} does: it learns nothing of it. */
    public void kill() {
        process.toHandle().destroyForcibly();
    }

    /** Tells it to stop, as Ctrl+C and the system do. */
    public void stop() {
        process.toHandle().destroy();
    }

    public boolean isRunning() {
        return process.isAlive();
    }

    /** The status it ended with. */
    public int waited() {
        try {
            if (!process.waitFor(PATIENCE_S, TimeUnit.SECONDS)) throw new AssertionError("it does not end");
            return process.exitValue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    /** All that it has printed, once it has ended; errors last. */
    public String said() {
        waited();
        return out.whole() + err.whole();
    }

    /** What it has printed of errors, once it has ended. */
    public String errors() {
        waited();
        return err.whole();
    }

    @Override
    public void close() {
        kill();
        waited();
    }

    /** One of the two streams, read as it comes. */
    private static final class Said {
        private final CompletableFuture<@Nullable String> address = new CompletableFuture<>();
        private final CompletableFuture<String> whole = new CompletableFuture<>();

        Said(BufferedReader lines) {
            Thread thread = new Thread(() -> read(lines), "said");
            thread.setDaemon(true);
            thread.start();
        }

        private void read(BufferedReader lines) {
            StringBuilder all = new StringBuilder();
            try {
                for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                    all.append(line).append('\n');
                    Matcher found = ADDRESS.matcher(line);
                    if (found.find()) address.complete(found.group());
                }
            } catch (IOException e) {
                all.append(e);
            }
            address.complete(null);
            whole.complete(all.toString());
        }

        @Nullable
        String address() {
            return in(address);
        }

        String whole() {
            return in(whole);
        }

        private static <T extends @Nullable Object> T in(CompletableFuture<T> future) {
            try {
                return future.get(PATIENCE_S, TimeUnit.SECONDS);
            } catch (ExecutionException | TimeoutException e) {
                throw new AssertionError(e);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new AssertionError(e);
            }
        }
    }
}
