package tideover.web.trial;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpClient.Redirect;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Asks the workbench as a browser without script does, cookie and form token included; follows nothing on its own. */
public final class Visitor {
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final Pattern FORM_TOKEN = Pattern.compile("data-form-token=\"([^\"]+)\"");

    private final Asked desk;
    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .followRedirects(Redirect.NEVER)
            .build();

    private Visitor(Asked desk) {
        this.desk = desk;
    }

    static Visitor letIn(Asked desk) {
        Visitor visitor = new Visitor(desk);
        int status = visitor.send(request(desk.startAddress()).GET()).statusCode();
        if (status != 303) throw new AssertionError("the start address answered " + status);
        return visitor;
    }

    static Visitor outside(Asked desk) {
        return new Visitor(desk);
    }

    /** Reads a page. */
    public HttpResponse<String> read(String path) {
        return send(request(desk.at(path)).GET());
    }

    /** Reads whatever is at a whole address. */
    public HttpResponse<String> readAt(String address) {
        return send(request(address).GET());
    }

    /** Reads what is no text. */
    public HttpResponse<byte[]> download(String path) {
        return send(request(desk.at(path)).GET(), BodyHandlers.ofByteArray());
    }

    /** Sends a form as its page would. @param fields name, value, name, value… */
    public HttpResponse<String> post(String path, String... fields) {
        return send(request(desk.at(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(form(formToken(), fields)));
    }

    /** Sends a form as script on its page would. @param fields name, value, name, value… */
    public HttpResponse<String> ask(String path, String token, String... fields) {
        return send(request(desk.at(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("HX-Request", "true")
                .POST(form(token, fields)));
    }

    /** What forms send along so that nobody else can send them. */
    public String formToken() {
        Matcher token = FORM_TOKEN.matcher(read("/sites/new").body());
        return token.find() ? token.group(1) : "";
    }

    /** Any request, with this visitor's cookie. */
    public HttpResponse<String> send(HttpRequest.Builder request) {
        return send(request, BodyHandlers.ofString());
    }

    private <T> HttpResponse<T> send(HttpRequest.Builder request, HttpResponse.BodyHandler<T> handler) {
        try {
            return client.send(request.timeout(PATIENCE).build(), handler);
        } catch (IOException e) {
            throw new NoAnswer(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    private static HttpRequest.Builder request(String address) {
        return HttpRequest.newBuilder(URI.create(address));
    }

    private static BodyPublisher form(String token, String... fields) {
        StringBuilder body = new StringBuilder("_csrf=").append(encoded(token));
        for (int i = 0; i < fields.length; i += 2)
            body.append('&').append(encoded(fields[i])).append('=').append(encoded(fields[i + 1]));
        return BodyPublishers.ofString(body.toString());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
