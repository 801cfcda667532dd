package tideover.web.trial;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;

/** Asks the HTTP API with the key, as programs do. */
public final class Program {
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final Asked desk;

    Program(Asked desk) {
        this.desk = desk;
    }

    public HttpResponse<byte[]> get(String path) {
        return send(request(path).GET());
    }

    public HttpResponse<byte[]> delete(String path) {
        return send(request(path).DELETE());
    }

    /** Sends JSON. */
    public HttpResponse<byte[]> post(String path, String json) {
        return send(request(path).header("Content-Type", "application/json").POST(BodyPublishers.ofString(json)));
    }

    /** Sends a file. */
    public HttpResponse<byte[]> post(String path, byte[] file) {
        return send(request(path)
                .header("Content-Type", "application/octet-stream")
                .POST(BodyPublishers.ofByteArray(file)));
    }

    /** The text of an answer. */
    public static String text(HttpResponse<byte[]> answer) {
        return new String(answer.body(), StandardCharsets.UTF_8);
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(desk.at(path)))
                .timeout(PATIENCE)
                .header("Authorization", "Bearer " + desk.key());
    }

    private static HttpResponse<byte[]> send(HttpRequest.Builder request) {
        try {
            return CLIENT.send(request.build(), BodyHandlers.ofByteArray());
        } catch (IOException e) {
            throw new NoAnswer(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }
}
