package tideover.web.wiring;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.engine.wiring.schedule.CuttingList;
import tideover.papers.Wording;
import tideover.papers.json.WiringJson;
import tideover.papers.terminals.TerminalSheet;
import tideover.papers.wiring.Listing;
import tideover.papers.wiring.ListingCsv;
import tideover.web.jobs.Job;
import tideover.web.jobs.JobFile;
import tideover.web.jobs.JobKind;
import tideover.web.jobs.Jobs;
import tideover.web.page.Download;
import tideover.web.page.NotHere;
import tideover.web.page.Notice;
import tideover.web.page.Pages;
import tideover.web.page.TypedNumber;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** The wiring, part by part, and the search for mistakes. */
@RestController
final class WiringPage {
    private static final String PAGE = "/sites/{variant}/wiring";
    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml");

    private final Works works;
    private final Pages pages;
    private final Frames frames;
    private final WiringSheets sheets;
    private final MistakeSearch search;
    private final Jobs jobs;

    WiringPage(Works works, Pages pages, Frames frames, WiringSheets sheets, MistakeSearch search, Jobs jobs) {
        this.works = works;
        this.pages = pages;
        this.frames = frames;
        this.sheets = sheets;
        this.search = search;
        this.jobs = jobs;
    }

    @GetMapping(PAGE)
    ResponseEntity<byte[]> show(
            @PathVariable String variant,
            @RequestParam(defaultValue = "power") String part,
            @RequestParam(defaultValue = "") String device,
            HttpServletRequest request) {
        return pages.show("wiring", sheets.of(works.open(variant), part, device, allowance(request), request));
    }

    @GetMapping(PAGE + "/{part}.csv")
    ResponseEntity<byte[]> csv(@PathVariable String variant, @PathVariable String part, HttpServletRequest request) {
        Work work = works.open(variant);
        if (MistakeSearch.PARTS.contains(part)) throw new NotHere("made by long work: " + part);
        Wording words = frames.words(request).with(work.installation());
        List<Listing> listings = sheets.listings(work, part, allowance(request), words);
        return Download.text(JobFile.CSV, part + ".csv", ListingCsv.of(listings.get(0)));
    }

    /** All lists that are told unless something else is asked for, for other programs. */
    @GetMapping("/sites/{variant}/wiring.json")
    ResponseEntity<byte[]> json(@PathVariable String variant, HttpServletRequest request) {
        Work work = works.open(variant);
        List<Listing> listings = sheets.atOnce(work, frames.words(request));
        return Download.text(
                MediaType.APPLICATION_JSON,
                "wiring.json",
                new WiringJson(work.revision().digest(), work.atOnce().rules(), listings).text());
    }

    private static TypedNumber allowance(HttpServletRequest request) {
        return TypedNumber.of(request.getParameter("allowance"), CuttingList.USUAL_ALLOWANCE_M);
    }

    @GetMapping(PAGE + "/terminals/{sheet}.svg")
    ResponseEntity<byte[]> drawing(
            @PathVariable String variant,
            @PathVariable String sheet,
            @RequestParam(defaultValue = "") String device,
            HttpServletRequest request) {
        TerminalSheet drawn = sheets.sheet(works.open(variant), sheet, device, request)
                .orElseThrow(() -> new NotHere("sheet " + sheet));
        return Download.text(SVG, "terminals-" + sheet + ".svg", drawn.svg());
    }

    /** Starts the search for mistakes. */
    @PostMapping(PAGE + "/search")
    ResponseEntity<byte[]> search(
            @PathVariable String variant,
            @RequestParam(defaultValue = "coverage") String part,
            HttpServletRequest request) {
        Work work = works.open(variant);
        Wording words = frames.words(request);
        Optional<Job> job = jobs.start(JobKind.MISTAKES, work.revision().id(), search.of(work, words));
        if (job.isEmpty())
            return pages.show(
                    HttpStatus.SERVICE_UNAVAILABLE,
                    "notice",
                    Notice.of(pages.frame(request, "job.tooMuch.title"), "job.tooMuch.title", "job.tooMuch"));
        String shown = MistakeSearch.PARTS.contains(part) ? part : MistakeSearch.PARTS.get(0);
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, work.address() + WiringSheets.PAGE + "?part=" + shown)
                .build();
    }
}
