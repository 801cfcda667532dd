package tideover.web.handover;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;
import tideover.engine.assessment.Assessment;
import tideover.papers.Wording;
import tideover.papers.json.AssessmentJson;
import tideover.web.jobs.JobKind;
import tideover.web.jobs.Jobs;
import tideover.web.page.Download;
import tideover.web.page.Notice;
import tideover.web.page.Pages;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** What is handed over, and the making of it. */
@RestController
final class HandoverPage {
    private final Works works;
    private final Pages pages;
    private final Frames frames;
    private final HandoverSheets sheets;
    private final PaperMaking making;
    private final Jobs jobs;

    HandoverPage(Works works, Pages pages, Frames frames, HandoverSheets sheets, PaperMaking making, Jobs jobs) {
        this.works = works;
        this.pages = pages;
        this.frames = frames;
        this.sheets = sheets;
        this.making = making;
        this.jobs = jobs;
    }

    @GetMapping("/sites/{variant}/handover")
    ResponseEntity<byte[]> show(@PathVariable String variant, HttpServletRequest request) {
        return pages.show("handover", sheets.of(works.open(variant), request));
    }

    /** Starts the making of the papers. */
    @PostMapping("/sites/{variant}/handover/papers")
    ResponseEntity<byte[]> make(@PathVariable String variant, HttpServletRequest request) {
        Work work = works.open(variant);
        Wording words = frames.words(request);
        if (jobs.start(JobKind.PAPERS, work.revision().id(), making.of(work, words))
                .isEmpty())
            return pages.show(
                    HttpStatus.SERVICE_UNAVAILABLE,
                    "notice",
                    Notice.of(pages.frame(request, "job.tooMuch.title"), "job.tooMuch.title", "job.tooMuch"));
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, work.address() + "/handover")
                .build();
    }

    @GetMapping("/sites/{variant}/findings.json")
    ResponseEntity<byte[]> findings(@PathVariable String variant, HttpServletRequest request) {
        Work work = works.open(variant);
        Assessment explained = works.explained(work);
        Wording words = frames.words(request).with(explained.installation());
        String text = new AssessmentJson(words, explained, work.revision().digest()).text();
        return Download.text(MediaType.APPLICATION_JSON, "findings.json", text);
    }
}
