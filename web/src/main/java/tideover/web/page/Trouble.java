package tideover.web.page;

import jakarta.servlet.http.HttpServletRequest;
import java.util.NoSuchElementException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.TypeMismatchException;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.multipart.MultipartException;
import tideover.store.database.StoreRefusal;

/** The one place where what went wrong becomes a page: a sentence, never a stack trace. */
@ControllerAdvice
final class Trouble {
    private static final Logger LOG = LoggerFactory.getLogger(Trouble.class);

    private final Pages pages;

    Trouble(Pages pages) {
        this.pages = pages;
    }

    @ExceptionHandler({NotHere.class, NoSuchElementException.class})
    ResponseEntity<?> notHere(HttpServletRequest request) {
        if (ForPrograms.isFor(request))
            return ForPrograms.refused(
                    HttpStatus.NOT_FOUND, pages.words(request).text("api.notHere"));
        return notice(request, HttpStatus.NOT_FOUND, "notHere");
    }

    /** The store cannot do it now: its own sentence says why, and what is to be done. */
    @ExceptionHandler(StoreRefusal.class)
    ResponseEntity<byte[]> refusal(StoreRefusal refusal, HttpServletRequest request) {
        LOG.error("store refused reason={}", refusal.reason(), refusal);
        Frame frame = pages.frame(request, "refusal.title");
        String sentence = frame.words().of(refusal.phrase());
        boolean script = request.getHeader("HX-Request") != null;
        return pages.show(
                HttpStatus.SERVICE_UNAVAILABLE,
                script ? "refusedPart" : "refused",
                new Refused(frame, sentence, Again.of(request)));
    }

    @ExceptionHandler({TypeMismatchException.class, MultipartException.class})
    ResponseEntity<byte[]> mismatch(HttpServletRequest request) {
        return notice(request, HttpStatus.BAD_REQUEST, "unreadable");
    }

    @ExceptionHandler(Exception.class)
    ResponseEntity<?> any(Exception trouble, HttpServletRequest request) {
        if (trouble instanceof ErrorResponse known) {
            HttpStatus status = HttpStatus.valueOf(known.getStatusCode().value());
            if (status == HttpStatus.NOT_FOUND) return notHere(request);
            if (status.is4xxClientError() && ForPrograms.isFor(request))
                return ForPrograms.refused(status, pages.words(request).text("api.request"));
            if (status.is4xxClientError()) return notice(request, status, "unreadable");
        }
        LOG.error("request failed method={} path={}", request.getMethod(), request.getRequestURI(), trouble);
        return notice(request, HttpStatus.INTERNAL_SERVER_ERROR, "ourFault");
    }

    private ResponseEntity<byte[]> notice(HttpServletRequest request, HttpStatus status, String name) {
        return pages.show(
                status, "notice", Notice.of(pages.frame(request, name + ".title"), name + ".title", name + ".text"));
    }
}
