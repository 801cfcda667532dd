package tideover.web.sites;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import tideover.papers.Wording;
import tideover.web.page.Pages;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** The folder of a site: files, copies, shelf. */
@RestController
final class FolderPage {
    private final Works works;
    private final Frames frames;
    private final Pages pages;

    FolderPage(Works works, Frames frames, Pages pages) {
        this.works = works;
        this.frames = frames;
        this.pages = pages;
    }

    /** A site opens at its circuits, the desk where most of the work is done. */
    @GetMapping("/sites/{variant}")
    ResponseEntity<String> open(@PathVariable String variant) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, works.open(variant).address() + "/circuits")
                .build();
    }

    @GetMapping("/sites/{variant}/folder")
    ResponseEntity<String> show(@PathVariable String variant, HttpServletRequest request) {
        Work work = works.open(variant);
        Wording words = frames.words(request).with(work.installation());
        return pages.show(
                "folder", new Folder(frames.beside(request, words, work, words.text("folder.title")), work.address()));
    }
}
