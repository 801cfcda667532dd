package tideover.web.page;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/** Refusals for whoever reads no pages. */
final class ForPrograms {
    private static final String API = "/api/";

    private ForPrograms() {}

    /** Whether an address is one that programs ask. */
    static boolean isAt(String path) {
        return path.startsWith(API);
    }

    static boolean isFor(HttpServletRequest request) {
        return isAt(request.getRequestURI());
    }

    /** One thing in the way, in the form of the HTTP API. */
    static Map<String, Object> problem(String sentence) {
        return Map.of(
                "problems", List.of(Map.of("sentence", sentence, "file", "", "line", 0, "column", 0, "path", "")));
    }

    static ResponseEntity<Object> refused(HttpStatus status, String sentence) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(problem(sentence));
    }
}
