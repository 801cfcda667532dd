package tideover.web.work;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.HandlerMapping;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Requests for one variant take turns: they share its judged site, and what is resolved and studied there remembers what it
 * was asked, for one thread at a time. Different variants do not wait for each other, but by chance.
 */
@Configuration
class Turns implements WebMvcConfigurer, HandlerInterceptor {
    private static final String VARIANT = "variant";
    private static final String TAKEN = Turns.class.getName();
    private static final int LOCKS = 64;

    private final ReentrantLock[] locks =
            IntStream.range(0, LOCKS).mapToObj(i -> new ReentrantLock()).toArray(ReentrantLock[]::new);

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this);
    }

    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
        if (request.getAttribute(HandlerMapping.URI_TEMPLATE_VARIABLES_ATTRIBUTE) instanceof Map<?, ?> variables
                && variables.get(VARIANT) instanceof String variant) {
            ReentrantLock lock = locks[Math.floorMod(variant.hashCode(), LOCKS)];
            lock.lock();
            request.setAttribute(TAKEN, lock);
        }
        return true;
    }

    @Override
    public void afterCompletion(
            HttpServletRequest request, HttpServletResponse response, Object handler, @Nullable Exception trouble) {
        if (request.getAttribute(TAKEN) instanceof ReentrantLock lock) {
            request.removeAttribute(TAKEN);
            lock.unlock();
        }
    }
}
