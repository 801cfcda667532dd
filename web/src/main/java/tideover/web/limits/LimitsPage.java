package tideover.web.limits;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import tideover.web.page.Pages;
import tideover.web.work.Works;

/** Every limit of a site's rule book. */
@RestController
final class LimitsPage {
    private final Works works;
    private final Pages pages;
    private final LimitsSheets sheets;

    LimitsPage(Works works, Pages pages, LimitsSheets sheets) {
        this.works = works;
        this.pages = pages;
        this.sheets = sheets;
    }

    @GetMapping("/sites/{variant}/limits")
    ResponseEntity<byte[]> show(@PathVariable String variant, HttpServletRequest request) {
        return pages.show("limits", sheets.of(works.open(variant), request));
    }
}
