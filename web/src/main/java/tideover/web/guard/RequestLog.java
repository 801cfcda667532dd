package tideover.web.guard;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Objects;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.servlet.HandlerMapping;

/**
 * Notes every change that was asked for and what was answered: the route, never the address, in which people's words may
 * stand, and nothing of what was sent.
 */
final class RequestLog extends OncePerRequestFilter {
    private static final Logger LOG = LoggerFactory.getLogger(RequestLog.class);
    private static final Set<String> READING = Set.of("GET", "HEAD");

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        long begin = System.nanoTime();
        try {
            chain.doFilter(request, response);
        } finally {
            if (!READING.contains(request.getMethod()))
                LOG.atInfo()
                        .setMessage("request answered")
                        .addKeyValue("method", request.getMethod())
                        .addKeyValue("route", route(request))
                        .addKeyValue("status", response.getStatus())
                        .addKeyValue("tookMs", (System.nanoTime() - begin) / 1_000_000)
                        .log();
        }
    }

    private static String route(HttpServletRequest request) {
        return Objects.toString(request.getAttribute(HandlerMapping.BEST_MATCHING_PATTERN_ATTRIBUTE), "none");
    }
}
