package tideover.web.page;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import tideover.papers.Wording;

/** What the server itself refuses before any page is asked. */
@RestController
final class Errors implements ErrorController {
    private final Pages pages;

    Errors(Pages pages) {
        this.pages = pages;
    }

    @RequestMapping("/error")
    ResponseEntity<?> error(HttpServletRequest request) {
        Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        HttpStatus known = code instanceof Integer number ? HttpStatus.resolve(number) : null;
        HttpStatus status = known == null ? HttpStatus.NOT_FOUND : known;
        if (request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI) instanceof String asked
                && ForPrograms.isAt(asked)) return ForPrograms.refused(status, sentence(status, pages.words(request)));
        String name = switch (status) {
            case UNAUTHORIZED -> "door";
            case FORBIDDEN -> "forged";
            case NOT_FOUND -> "notHere";
            default -> status.is4xxClientError() ? "unreadable" : "ourFault";
        };
        return pages.show(
                status, "notice", Notice.of(pages.frame(request, name + ".title"), name + ".title", name + ".text"));
    }

    private static String sentence(HttpStatus status, Wording words) {
        return words.text(
                switch (status) {
                    case UNAUTHORIZED -> "api.door";
                    case FORBIDDEN -> "api.forged";
                    default -> status.is4xxClientError() ? "api.request" : "ourFault.text";
                });
    }
}
