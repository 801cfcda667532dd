package tideover.web.trial;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The machine's own Chromium, started once for all tests of a run. */
final class Chromium {
    private static final List<String> BROWSERS = List.of("chromium", "chromium-browser", "google-chrome", "chrome");
    private static final List<String> SCRIPT_RUNNERS = List.of("node", "nodejs");

    /** What takes longer never comes; a busy machine may take ten times what a quiet one does. */
    private static final double PATIENCE_MS = 30_000;

    private static @Nullable Browser browser;

    private Chromium() {}

    /** The one browser; it ends with the tests. */
    private static synchronized Browser browser() {
        if (browser == null) browser = start();
        return browser;
    }

    /** A further window. */
    static BrowserContext window(NewContextOptions options) {
        BrowserContext window = browser().newContext(options);
        window.setDefaultTimeout(PATIENCE_MS);
        return window;
    }

    private static Browser start() {
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
        Map<String, String> environment = new HashMap<>(System.getenv());
        // The driver that Playwright would bring is ten times the size of all else.
        environment.put("PLAYWRIGHT_NODEJS_PATH", require("PLAYWRIGHT_NODEJS_PATH", SCRIPT_RUNNERS, "nodejs"));
        environment.put("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
        String program = require("TIDEOVER_CHROMIUM", BROWSERS, "chromium");
        Playwright playwright = Playwright.create(new Playwright.CreateOptions().setEnv(environment));
        Browser started = playwright
                .chromium()
                .launch(new LaunchOptions()
                        .setExecutablePath(Path.of(program))
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
        // Playwright speaks with one thread only, which is gone by then; its process is ours to end.
        Runtime.getRuntime()
                .addShutdownHook(
                        new Thread(() -> ProcessHandle.current().descendants().forEach(ProcessHandle::destroy)));
        return started;
    }

    private static String require(String variable, List<String> names, String packageName) {
        String given = System.getenv(variable);
        if (given != null && !given.isBlank()) return given;
        return names.stream()
                .map(Chromium::find)
                .flatMap(Optional::stream)
                .findFirst()
                .orElseThrow(() -> new AssertionError(
                        ("the tests of pages need one of %s on the PATH: install %s, or name the program in the "
                                        + "environment variable %s")
                                .formatted(names, packageName, variable)));
    }

    private static Optional<String> find(String name) {
        return Stream.of(Objects.requireNonNullElse(System.getenv("PATH"), "").split(File.pathSeparator))
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .map(Path::toString)
                .findFirst();
    }
}
