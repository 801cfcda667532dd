package tideover.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tideover.store.ServingFile;

/** The workbench as a user starts it, in a process and a folder of its own, and one browser's cookie for it. */
final class WebDesk implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:[0-9]+/enter\\?token=\\S+");
    private static final Pattern FORM_TOKEN = Pattern.compile("data-form-token=\"([^\"]+)\"");
    private static final Pattern RESIDENT = Pattern.compile("VmRSS:\\s*([0-9]+) kB");
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final Path folder;
    private final Process process;
    private final URI origin;
    private final HttpClient client;
    private String formToken = "";

    private WebDesk(Path folder, Process process, URI origin, HttpClient client) {
        this.folder = folder;
        this.process = process;
        this.origin = origin;
        this.client = client;
    }

    /** Starts it and enters; the first page is there when this returns. */
    static WebDesk start(Program program, Path folder) throws IOException {
        Process process = new ProcessBuilder(
                        program.launcher().toString(), "serve", "--port", "0", "--data", folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try {
            return enter(folder, process);
        } catch (IOException | RuntimeException e) {
            // It would go on serving nobody.
            process.destroy();
            throw e;
        }
    }

    private static WebDesk enter(Path folder, Process process) throws IOException {
        String address = address(process);
        HttpClient client = HttpClient.newBuilder()
                .cookieHandler(new CookieManager())
                .followRedirects(HttpClient.Redirect.NORMAL)
                .build();
        WebDesk desk = new WebDesk(folder, process, URI.create(address).resolve("/"), client);
        HttpResponse<String> first =
                desk.send(HttpRequest.newBuilder(URI.create(address)).GET());
        Matcher token = FORM_TOKEN.matcher(first.body());
        if (first.statusCode() != 200 || !token.find())
            throw new IllegalStateException("the first page answered " + first.statusCode());
        desk.formToken = token.group(1);
        return desk;
    }

    private static String address(Process process) throws IOException {
        BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            Matcher found = ADDRESS.matcher(line);
            if (found.find()) return found.group();
        }
        throw new IllegalStateException("the workbench ended without a start address");
    }

    /** Keeps a site file as a new site. @return its variant */
    String importSite(String text) throws IOException {
        String key = ServingFile.find(folder).orElseThrow().key();
        HttpResponse<String> answer = send(request("/api/sites?file=site.json")
                .header("Authorization", "Bearer " + key)
                .POST(BodyPublishers.ofString(text)));
        Matcher variant = Pattern.compile("\"variant\" ?: ?\"([0-9a-f]{16})\"").matcher(answer.body());
        if (!variant.find())
            throw new IllegalStateException(
                    "the site was not kept: %d %s".formatted(answer.statusCode(), answer.body()));
        return variant.group(1);
    }

    /** The site as it is kept now. */
    String site(String variant) throws IOException {
        String key = ServingFile.find(folder).orElseThrow().key();
        return send(request("/api/sites/%s/site.json".formatted(variant))
                        .header("Authorization", "Bearer " + key)
                        .GET())
                .body();
    }

    /** A form as the sheet sends it. */
    CompletableFuture<HttpResponse<String>> post(String path, List<String> fields) {
        StringBuilder body = new StringBuilder();
        for (int i = 0; i < fields.size(); i += 2)
            body.append(body.isEmpty() ? "" : "&")
                    .append(fields.get(i))
                    .append('=')
                    .append(URLEncoder.encode(fields.get(i + 1), StandardCharsets.UTF_8));
        HttpRequest request = request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("HX-Request", "true")
                .header("X-CSRF-TOKEN", formToken)
                .POST(BodyPublishers.ofString(body.toString()))
                .build();
        return client.sendAsync(request, BodyHandlers.ofString());
    }

    /** Reads a page a moment later and does not wait for it. */
    void askLater(String path, long afterMs) {
        HttpRequest question = request(path).header("HX-Request", "true").GET().build();
        CompletableFuture.delayedExecutor(afterMs, TimeUnit.MILLISECONDS).execute(() -> {
            CompletableFuture<HttpResponse<Void>> unused = client.sendAsync(question, BodyHandlers.discarding());
        });
    }

    /** What its process keeps in memory [MB]; nothing where the system does not tell. */
    OptionalDouble residentMb() throws IOException {
        Path status = Path.of("/proc/%d/status".formatted(process.pid()));
        if (!Files.isReadable(status)) return OptionalDouble.empty();
        Matcher resident = RESIDENT.matcher(Files.readString(status));
        return resident.find() ? OptionalDouble.of(Long.parseLong(resident.group(1)) / 1000.0) : OptionalDouble.empty();
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(origin.resolve(path)).timeout(PATIENCE);
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws IOException {
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while the workbench answered", e);
        }
    }

    /** Stops it and takes its folder away. */
    @Override
    public void close() throws IOException {
        stop();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) Files.delete(path);
        }
    }

    /** Stops it; what is kept stays. */
    void stop() {
        process.destroy();
        try {
            if (!process.waitFor(30, TimeUnit.SECONDS))
                process.destroyForcibly().waitFor();
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
