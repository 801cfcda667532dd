package tideover.web.start;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A short life of the workbench for the launcher, which keeps the classes that come up in it so that later starts need not
 * look for them: it opens invented houses, lets itself in, reads pages, changes a fact, and ends.
 */
public final class Rehearsal {
    private static final Pattern CELL = Pattern.compile("data-path=\"(plan\\.[^\"]*lengthM)\" data-was=\"([^\"]*)\"");

    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .followRedirects(HttpClient.Redirect.NORMAL)
            .build();

    private Rehearsal() {}

    /** Arguments: an empty folder, and that of the examples. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Main.quietLibraries();
        PrintWriter nobody = new PrintWriter(Writer.nullWriter());
        ServeCommand command = new ServeCommand(nobody, nobody);
        Main.run(command, nobody, nobody, "demo", "--port", "0", "--data", arguments[0], "--examples", arguments[1]);
        try (Serving serving = command.serving()) {
            if (serving != null) new Rehearsal().play(serving);
        }
    }

    private void play(Serving serving) throws IOException, InterruptedException {
        URI sheet = read(URI.create(serving.address())).uri();
        String page = read(sheet).body();
        read(sheet.resolve("/"));
        read(sheet.resolve("findings"));
        read(sheet.resolve("diagram"));
        read(sheet.resolve("/assets/base.css"));
        Matcher token = Pattern.compile("data-form-token=\"([^\"]+)\"").matcher(page);
        Matcher base = Pattern.compile("data-base=\"(\\d+)\"").matcher(page);
        Matcher cell = CELL.matcher(page);
        if (token.find() && base.find() && cell.find())
            send(HttpRequest.newBuilder(sheet)
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .header("HX-Request", "true")
                    .POST(BodyPublishers.ofString("_csrf=%s&base=%s&path=%s&was=%s&typed=17"
                            .formatted(
                                    encoded(token.group(1)),
                                    base.group(1),
                                    encoded(cell.group(1)),
                                    encoded(cell.group(2))))));
    }

    private HttpResponse<String> read(URI address) throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(address));
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return client.send(request.build(), BodyHandlers.ofString());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
