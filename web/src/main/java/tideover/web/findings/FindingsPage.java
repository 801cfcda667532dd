package tideover.web.findings;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.engine.assessment.Assessment;
import tideover.engine.site.ThingId;
import tideover.papers.Wording;
import tideover.web.note.Margin.Pending;
import tideover.web.note.Margins;
import tideover.web.page.Pages;
import tideover.web.page.Stop;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** All findings, one finding, and the margin that other pages have beside them. */
@RestController
final class FindingsPage {
    private final Works works;
    private final Pages pages;
    private final Frames frames;
    private final FindingsSheets all;
    private final FindingSheets one;

    FindingsPage(Works works, Pages pages, Frames frames, FindingsSheets all, FindingSheets one) {
        this.works = works;
        this.pages = pages;
        this.frames = frames;
        this.all = all;
        this.one = one;
    }

    @GetMapping("/sites/{variant}/findings")
    ResponseEntity<byte[]> all(@PathVariable String variant, HttpServletRequest request) {
        FindingsSheet sheet = all.of(works.open(variant), Asked.of(request), request);
        return isStillComputing(sheet.pending(), request) ? nothingNew() : pages.show("findings", sheet);
    }

    @GetMapping("/sites/{variant}/findings/{check}/{place}")
    ResponseEntity<byte[]> one(
            @PathVariable String variant,
            @PathVariable String check,
            @PathVariable String place,
            @RequestParam(defaultValue = "") String state,
            HttpServletRequest request) {
        return pages.show("finding", one.of(works.open(variant), check, place, state, request));
    }

    /** What the margin shows once slow findings are there; nothing new before. */
    @GetMapping("/sites/{variant}/margin")
    ResponseEntity<byte[]> margin(
            @PathVariable String variant, @RequestParam(defaultValue = "") String order, HttpServletRequest request) {
        Work work = works.open(variant);
        Optional<Assessment> whole = works.whole(work);
        Pending pending = all.pending(work, whole);
        if (isStillComputing(pending, request)) return nothingNew();
        Wording words = frames.words(request).with(work.installation());
        return pages.show(
                "marginAnswer",
                new MarginAnswer(
                        frames.of(request, words, work, beside(request)),
                        new Margins(work, words).of(whole, places(order)).with(pending)));
    }

    /** The stop beside which the margin stands. */
    private static Stop beside(HttpServletRequest request) {
        String page = request.getHeader("HX-Current-URL");
        for (Stop stop : Stop.values()) if (page != null && page.contains("/" + stop.path())) return stop;
        return Stop.CIRCUITS;
    }

    private static List<ThingId> places(String order) {
        return Arrays.stream(order.split(","))
                .filter(ThingId::isWellFormed)
                .map(ThingId::new)
                .toList();
    }

    private static boolean isStillComputing(Pending pending, HttpServletRequest request) {
        return pending == Pending.COMPUTING && request.getHeader("HX-Request") != null;
    }

    private static ResponseEntity<byte[]> nothingNew() {
        return ResponseEntity.noContent().build();
    }
}
