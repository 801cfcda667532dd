package tideover.web.guard;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.web.page.Doorway;

/** Where the start address leads: its token becomes a cookie. */
@RestController
public final class Entrance {
    /** The one person there is in this step. */
    static final String PERSON = "person at this machine";

    private final StartTokens tokens;
    private final SecurityContextRepository contexts;
    private final Doorway doorway;

    Entrance(StartTokens tokens, SecurityContextRepository contexts, Doorway doorway) {
        this.tokens = tokens;
        this.contexts = contexts;
        this.doorway = doorway;
    }

    /** Lets in whoever brings an open token; without one, tells where to get it. */
    @GetMapping("/enter")
    ResponseEntity<byte[]> enter(
            @RequestParam(defaultValue = "") String token, HttpServletRequest request, HttpServletResponse response) {
        if (!tokens.use(token)) return doorway.closed(request);
        // A session from before must not become one that is let in.
        if (request.getSession(false) != null) request.changeSessionId();
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(PERSON, null, List.of()));
        contexts.saveContext(context, request, response);
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, tokens.firstPage())
                .build();
    }

    /** A further start address, for whoever holds the key: the old one was used up, or the browser was closed. */
    @PostMapping("/api/start-addresses")
    Map<String, String> issue(HttpServletRequest request) {
        return Map.of("address", address(request.getLocalPort(), tokens.issue()));
    }

    /** The address that lets in once. */
    public static String address(int port, String token) {
        return "http://127.0.0.1:%d/enter?token=%s".formatted(port, token);
    }
}
