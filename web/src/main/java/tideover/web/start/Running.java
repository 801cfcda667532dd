package tideover.web.start;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import tideover.store.ServingFile;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Asks a workbench that runs already. */
final class Running {
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private Running() {}

    /** A start address of the workbench that serves this folder; nothing where none answers. */
    static @Nullable String startAddress(Path folder) {
        ServingFile serving = ServingFile.find(folder).orElse(null);
        if (serving == null) return null;
        HttpRequest request = HttpRequest.newBuilder(
                        URI.create("http://127.0.0.1:%d/api/start-addresses".formatted(serving.port())))
                .timeout(PATIENCE)
                .header("Authorization", "Bearer " + serving.key())
                .POST(BodyPublishers.noBody())
                .build();
        try {
            HttpResponse<String> answer = HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
            return answer.statusCode() == 200
                    ? new JsonMapper().readTree(answer.body()).path("address").asString(null)
                    : null;
        } catch (IOException | JacksonException e) {
            return null;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return null;
        }
    }
}
