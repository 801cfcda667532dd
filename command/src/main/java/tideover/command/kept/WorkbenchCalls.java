package tideover.command.kept;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandler;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.store.ServingFile;
import tools.jackson.core.JacksonException;

/** Asks a workbench that runs over its HTTP API with its key; what it refuses is a refusal here. */
final class WorkbenchCalls {
    static final int NOT_FOUND = 404;
    /** The highest status of what was done. */
    static final int GOOD = 299;

    private static final Duration PATIENCE = Duration.ofSeconds(60);

    final HttpClient client = HttpClient.newHttpClient();
    private final ServingFile serving;
    private final Desk desk;

    WorkbenchCalls(ServingFile serving, Desk desk) {
        this.serving = serving;
        this.desk = desk;
    }

    HttpRequest.Builder reading(String path) {
        return request(path).GET();
    }

    HttpRequest.Builder post(String path, String json) {
        return request(path).header("Content-Type", "application/json").POST(BodyPublishers.ofString(json));
    }

    HttpRequest.Builder file(String path, byte[] content) {
        return request(path)
                .header("Content-Type", "application/octet-stream")
                .POST(BodyPublishers.ofByteArray(content));
    }

    HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:%d/api%s".formatted(serving.port(), path)))
                .timeout(PATIENCE)
                .header("Authorization", "Bearer " + serving.key());
    }

    JsonValue json(HttpRequest.Builder request) {
        return read(send(request));
    }

    JsonValue read(HttpResponse<String> answer) {
        if (answer.statusCode() > GOOD) throw refusal(answer);
        try {
            return answer.body().isEmpty() ? new JsonValue(null) : JsonValue.read(answer.body());
        } catch (JacksonException e) {
            throw silent();
        }
    }

    HttpResponse<String> send(HttpRequest.Builder request) {
        return send(request, BodyHandlers.ofString());
    }

    /** A file that is answered. */
    byte[] bytes(HttpRequest.Builder request) {
        HttpResponse<byte[]> answer = send(request, BodyHandlers.ofByteArray());
        if (answer.statusCode() > GOOD) throw refusal(new String(answer.body(), StandardCharsets.UTF_8));
        return answer.body();
    }

    private <T> HttpResponse<T> send(HttpRequest.Builder request, BodyHandler<T> body) {
        try {
            return client.send(request.build(), body);
        } catch (IOException e) {
            throw silent();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw silent();
        }
    }

    /** The sentences of the workbench; file, line and column before those about a file. */
    Refusal refusal(HttpResponse<String> answer) {
        return refusal(answer.body());
    }

    Refusal refusal(String body) {
        try {
            List<String> sentences = JsonValue.read(body).at("problems").items().stream()
                    .map(this::sentence)
                    .toList();
            return sentences.isEmpty() ? silent() : new Refusal(sentences);
        } catch (JacksonException e) {
            return silent();
        }
    }

    private String sentence(JsonValue problem) {
        return desk.wording()
                .at(
                        problem.at("file").text(),
                        problem.at("line").number(),
                        problem.at("column").number(),
                        problem.at("sentence").text());
    }

    Refusal silent() {
        return new Refusal(List.of(desk.sentence("keeping.silent", String.valueOf(serving.port()))));
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
