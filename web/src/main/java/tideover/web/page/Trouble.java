package tideover.web.page;

import jakarta.servlet.http.HttpServletRequest;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;

/** The one place where what went wrong becomes a page: a sentence, never a stack trace. */
@ControllerAdvice
final class Trouble {
    private static final Logger LOG = LoggerFactory.getLogger(Trouble.class);

    private final Pages pages;

    Trouble(Pages pages) {
        this.pages = pages;
    }

    @ExceptionHandler(NotHere.class)
    ResponseEntity<String> notHere(HttpServletRequest request) {
        return notice(request, HttpStatus.NOT_FOUND, "notHere");
    }

    @ExceptionHandler(Exception.class)
    ResponseEntity<String> any(Exception trouble, HttpServletRequest request) {
        if (trouble instanceof ErrorResponse known) {
            HttpStatus status = HttpStatus.valueOf(known.getStatusCode().value());
            if (status == HttpStatus.NOT_FOUND) return notHere(request);
            if (status.is4xxClientError()) return notice(request, status, "unreadable");
        }
        LOG.error("request failed method={} path={}", request.getMethod(), request.getRequestURI(), trouble);
        return notice(request, HttpStatus.INTERNAL_SERVER_ERROR, "ourFault");
    }

    private ResponseEntity<String> notice(HttpServletRequest request, HttpStatus status, String name) {
        return pages.show(
                status, "notice", Notice.of(pages.frame(request, name + ".title"), name + ".title", name + ".text"));
    }
}
