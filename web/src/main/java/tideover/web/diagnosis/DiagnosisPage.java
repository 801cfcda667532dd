package tideover.web.diagnosis;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import tideover.web.page.Pages;
import tideover.web.work.Works;

/** From what a caller has, or what was seen, to what may be wrong. */
@RestController
final class DiagnosisPage {
    private final Works works;
    private final Pages pages;
    private final DiagnosisSheets sheets;

    DiagnosisPage(Works works, Pages pages, DiagnosisSheets sheets) {
        this.works = works;
        this.pages = pages;
        this.sheets = sheets;
    }

    @GetMapping("/sites/{variant}" + DiagnosisSheets.PAGE)
    ResponseEntity<byte[]> show(@PathVariable String variant, HttpServletRequest request) {
        return pages.show("diagnosis", sheets.of(works.open(variant), Asked.of(request), request));
    }
}
