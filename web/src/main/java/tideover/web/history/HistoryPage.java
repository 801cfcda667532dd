package tideover.web.history;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.files.FieldTable;
import tideover.files.SiteWriter;
import tideover.papers.Wording;
import tideover.web.edit.Editing;
import tideover.web.edit.Editing.Done;
import tideover.web.edit.Outcome;
import tideover.web.page.Download;
import tideover.web.page.Pages;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** The revisions of a site and the ways between them. */
@RestController
final class HistoryPage {
    private static final String HISTORY = "/sites/{variant}/history";
    private static final String REVISION = "/sites/{variant}/revisions/{number}";

    private final Works works;
    private final Frames frames;
    private final Pages pages;
    private final Histories histories;
    private final Editing editing;
    private final SiteWriter writer;

    HistoryPage(Works works, Frames frames, Pages pages, Histories histories, Editing editing, FieldTable fields) {
        this.works = works;
        this.frames = frames;
        this.pages = pages;
        this.histories = histories;
        this.editing = editing;
        this.writer = new SiteWriter(fields);
    }

    @GetMapping(HISTORY)
    ResponseEntity<byte[]> show(
            @PathVariable String variant, @RequestParam(defaultValue = "0") long before, HttpServletRequest request) {
        return pages.show("history", histories.of(works.open(variant), before, Outcome.NONE, request));
    }

    @GetMapping(HISTORY + "/difference")
    ResponseEntity<byte[]> difference(
            @PathVariable String variant, @RequestParam long from, @RequestParam long to, HttpServletRequest request) {
        return pages.show("difference", histories.difference(works.open(variant), from, to, request));
    }

    @GetMapping(REVISION)
    ResponseEntity<byte[]> earlier(
            @PathVariable String variant, @PathVariable long number, HttpServletRequest request) {
        return pages.show("earlier", histories.earlier(works.open(variant), works.at(variant, number), request));
    }

    /** The site as it was, as a file. */
    @GetMapping(REVISION + "/site.yaml")
    ResponseEntity<byte[]> file(@PathVariable String variant, @PathVariable long number) {
        Work then = works.at(variant, number);
        String name = Download.name(then.row().designation(), "site") + "-revision-" + number + ".yaml";
        return Download.text(MediaType.parseMediaType("application/yaml"), name, writer.yaml(then.site()));
    }

    @PostMapping(HISTORY + "/undo")
    ResponseEntity<byte[]> undo(@PathVariable String variant, @RequestParam long base, HttpServletRequest request) {
        Work work = works.open(variant);
        return answer(editing.undo(work, base, words(work, request)), request);
    }

    @PostMapping(HISTORY + "/redo")
    ResponseEntity<byte[]> redo(@PathVariable String variant, @RequestParam long base, HttpServletRequest request) {
        Work work = works.open(variant);
        return answer(editing.redo(work, base, words(work, request)), request);
    }

    @PostMapping(HISTORY + "/restore")
    ResponseEntity<byte[]> restore(
            @PathVariable String variant,
            @RequestParam long number,
            @RequestParam long base,
            HttpServletRequest request) {
        Work work = works.open(variant);
        return answer(editing.restore(work, number, base, words(work, request)), request);
    }

    private ResponseEntity<byte[]> answer(Done done, HttpServletRequest request) {
        if (done.outcome().isRefused())
            return pages.show(HttpStatus.CONFLICT, "history", histories.of(done.work(), 0, done.outcome(), request));
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, done.work().address() + "/history")
                .build();
    }

    private Wording words(Work work, HttpServletRequest request) {
        return frames.words(request).with(work.installation());
    }
}
