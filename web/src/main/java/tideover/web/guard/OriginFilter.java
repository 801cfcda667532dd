package tideover.web.guard;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Set;
import org.springframework.http.HttpHeaders;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Refuses requests under another name than loopback, which a foreign name server may point here, and requests that
 * another site makes the browser send.
 */
final class OriginFilter extends OncePerRequestFilter {
    private static final Set<String> HOSTS = Set.of("127.0.0.1", "localhost", "[::1]");
    private static final Set<String> READING = Set.of("GET", "HEAD");

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (isOurs(request)) chain.doFilter(request, response);
        else response.sendError(HttpServletResponse.SC_FORBIDDEN);
    }

    private static boolean isOurs(HttpServletRequest request) {
        String host = request.getHeader(HttpHeaders.HOST);
        if (host == null) return false;
        int port = request.getLocalPort();
        boolean known = HOSTS.stream().anyMatch(name -> host.equals(name + ":" + port));
        if (!known) return false;
        String origin = request.getHeader(HttpHeaders.ORIGIN);
        if (origin != null && !origin.equals("http://" + host)) return false;
        String site = request.getHeader("Sec-Fetch-Site");
        if (site == null || site.equals("same-origin") || site.equals("none")) return true;
        // A link to us elsewhere may be followed; nothing else.
        return READING.contains(request.getMethod()) && "navigate".equals(request.getHeader("Sec-Fetch-Mode"));
    }
}
