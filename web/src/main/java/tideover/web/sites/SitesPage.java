package tideover.web.sites;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.List;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;
import tideover.web.page.Pages;
import tideover.web.sites.SiteImport.Taken;
import tideover.web.sites.SitesList.Shelf;

/** The list of sites, and files that become sites. */
@RestController
final class SitesPage {
    private final SiteLists lists;
    private final SiteImport imports;
    private final Pages pages;

    SitesPage(SiteLists lists, SiteImport imports, Pages pages) {
        this.lists = lists;
        this.imports = imports;
        this.pages = pages;
    }

    /** All sites or those searched for; where there are none at all, the first visit. */
    @GetMapping("/")
    ResponseEntity<byte[]> list(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String shelf,
            HttpServletRequest request) {
        if (lists.isEmpty()) return to("/sites/new");
        Shelf shown = shelf.equals("archived") ? Shelf.ARCHIVED : Shelf.IN_WORK;
        return pages.show("sites", lists.of(q.strip(), shown, List.of(), request));
    }

    @PostMapping("/sites/import")
    ResponseEntity<byte[]> bring(@RequestParam MultipartFile file, HttpServletRequest request) throws IOException {
        String name = file.getOriginalFilename();
        Taken taken = imports.take(name == null ? "" : name, file.getBytes(), pages.words(request));
        if (taken.variant() == null)
            return pages.show(
                    HttpStatus.UNPROCESSABLE_CONTENT, "sites", lists.of("", Shelf.IN_WORK, taken.problems(), request));
        return to("/sites/" + taken.variant() + "/circuits");
    }

    private static ResponseEntity<byte[]> to(String address) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, address)
                .build();
    }
}
