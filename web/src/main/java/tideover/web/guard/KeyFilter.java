package tideover.web.guard;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.http.HttpHeaders;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/** Lets in whoever sends the access key; it is sent by programs only, never by a browser on its own. */
final class KeyFilter extends OncePerRequestFilter {
    static final String BEARER = "Bearer ";

    private final AccessKey key;

    KeyFilter(AccessKey key) {
        this.key = key;
    }

    static boolean hasKey(HttpServletRequest request) {
        String header = request.getHeader(HttpHeaders.AUTHORIZATION);
        return header != null && header.startsWith(BEARER);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String header = request.getHeader(HttpHeaders.AUTHORIZATION);
        if (header != null && header.startsWith(BEARER)) {
            // A wrong key is refused even where a cookie would do: with a key nobody asks for a form token.
            if (!Secret.same(header.substring(BEARER.length()), key.text())) {
                response.sendError(HttpServletResponse.SC_UNAUTHORIZED);
                return;
            }
            SecurityContextHolder.getContext()
                    .setAuthentication(
                            UsernamePasswordAuthenticationToken.authenticated(Entrance.PERSON, null, List.of()));
        }
        chain.doFilter(request, response);
    }
}
