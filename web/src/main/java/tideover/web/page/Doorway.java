package tideover.web.page;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.AuthenticationException;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** What whoever is not let in sees. */
@Component
public final class Doorway {
    private final Pages pages;
    private final JsonMapper json;

    Doorway(Pages pages, JsonMapper json) {
        this.pages = pages;
        this.json = json;
    }

    /** The page that tells where the start address is. */
    public ResponseEntity<byte[]> closed(HttpServletRequest request) {
        return pages.show(
                HttpStatus.UNAUTHORIZED,
                "notice",
                Notice.of(pages.frame(request, "door.title"), "door.title", "door.text"));
    }

    /** Refuses a request, as a page or for programs as JSON. */
    public void refuse(HttpServletRequest request, HttpServletResponse response, Exception reason) throws IOException {
        // Whoever is not let in is told so, whatever else was wrong with the request.
        boolean unknown = reason instanceof AuthenticationException || !Person.isLetIn();
        HttpStatus status = unknown ? HttpStatus.UNAUTHORIZED : HttpStatus.FORBIDDEN;
        String name = unknown ? "door" : "forged";
        response.setStatus(status.value());
        response.setCharacterEncoding(StandardCharsets.UTF_8);
        if (ForPrograms.isFor(request)) {
            response.setContentType(MediaType.APPLICATION_JSON_VALUE);
            response.getWriter()
                    .write(json.writeValueAsString(
                            ForPrograms.problem(pages.words(request).text("api." + name))));
            return;
        }
        response.setContentType(MediaType.TEXT_HTML_VALUE);
        response.getOutputStream()
                .write(pages.bytes(
                        "notice", Notice.of(pages.frame(request, name + ".title"), name + ".title", name + ".text")));
    }
}
