package tideover.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.NoSuchElementException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import tideover.papers.Wording;
import tideover.store.database.StoreRefusal;
import tideover.web.page.NotHere;
import tideover.web.page.Pages;
import tools.jackson.core.JacksonException;

/** What went wrong, for programs: the sentence of the page, as JSON. */
@RestControllerAdvice(basePackageClasses = ApiTrouble.class)
@Order(Ordered.HIGHEST_PRECEDENCE)
final class ApiTrouble {
    private static final Logger LOG = LoggerFactory.getLogger(ApiTrouble.class);

    private final Pages pages;

    ApiTrouble(Pages pages) {
        this.pages = pages;
    }

    @ExceptionHandler({NotHere.class, NoSuchElementException.class})
    ResponseEntity<Answer.Refused> notHere(HttpServletRequest request) {
        return refused(HttpStatus.NOT_FOUND, words(request).text("api.notHere"));
    }

    @ExceptionHandler(StoreRefusal.class)
    ResponseEntity<Answer.Refused> refusal(StoreRefusal refusal, HttpServletRequest request) {
        LOG.error("store refused reason={}", refusal.reason(), refusal);
        return refused(HttpStatus.SERVICE_UNAVAILABLE, words(request).of(refusal.phrase()));
    }

    @ExceptionHandler(HttpMessageNotReadableException.class)
    ResponseEntity<Answer.Refused> unreadable(HttpMessageNotReadableException trouble, HttpServletRequest request) {
        Wording words = words(request);
        for (Throwable cause = trouble; cause != null; cause = cause.getCause())
            if (cause instanceof JacksonException json && json.getLocation() != null)
                return refused(
                        HttpStatus.BAD_REQUEST,
                        words.text(
                                "api.unreadable",
                                Integer.toString(json.getLocation().getLineNr()),
                                Integer.toString(json.getLocation().getColumnNr())));
        return refused(HttpStatus.BAD_REQUEST, words.text("api.noBody"));
    }

    @ExceptionHandler(Wanted.Unreadable.class)
    ResponseEntity<Answer.Refused> unreadable(Wanted.Unreadable part, HttpServletRequest request) {
        return refused(HttpStatus.BAD_REQUEST, part.sentence(words(request)));
    }

    @ExceptionHandler(MethodArgumentTypeMismatchException.class)
    ResponseEntity<Answer.Refused> mismatch(MethodArgumentTypeMismatchException trouble, HttpServletRequest request) {
        return refused(HttpStatus.BAD_REQUEST, words(request).text("api.parameter", trouble.getName()));
    }

    @ExceptionHandler(Exception.class)
    ResponseEntity<Answer.Refused> any(Exception trouble, HttpServletRequest request) {
        if (trouble instanceof ErrorResponse known) {
            HttpStatus status = HttpStatus.valueOf(known.getStatusCode().value());
            if (status.is4xxClientError()) return refused(status, words(request).text("api.request"));
        }
        LOG.error("request failed method={} path={}", request.getMethod(), request.getRequestURI(), trouble);
        return refused(HttpStatus.INTERNAL_SERVER_ERROR, words(request).text("ourFault.text"));
    }

    private Wording words(HttpServletRequest request) {
        return pages.words(request);
    }

    private static ResponseEntity<Answer.Refused> refused(HttpStatus status, String sentence) {
        return ResponseEntity.status(status).body(new Answer.Refused(List.of(Answer.Problem.of(sentence))));
    }
}
