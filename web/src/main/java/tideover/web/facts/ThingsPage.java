package tideover.web.facts;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.web.edit.EditForm;
import tideover.web.edit.Editing;
import tideover.web.edit.Editing.Done;
import tideover.web.edit.Outcome;
import tideover.web.edit.Said;
import tideover.web.edit.Typed;
import tideover.web.page.Pages;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** The facts of a thing, and things that are new. */
@RestController
final class ThingsPage {
    private static final String THING = "/sites/{variant}/things/{id}";

    private final Works works;
    private final Frames frames;
    private final Pages pages;
    private final ThingSheets sheets;
    private final NewThings newThings;
    private final Editing editing;

    ThingsPage(Works works, Frames frames, Pages pages, ThingSheets sheets, NewThings newThings, Editing editing) {
        this.works = works;
        this.frames = frames;
        this.pages = pages;
        this.sheets = sheets;
        this.newThings = newThings;
        this.editing = editing;
    }

    @GetMapping(THING)
    ResponseEntity<byte[]> show(@PathVariable String variant, @PathVariable String id, HttpServletRequest request) {
        return pages.show("thing", sheets.of(works.open(variant), id, List.of(), Outcome.NONE, request));
    }

    @PostMapping(THING)
    ResponseEntity<byte[]> change(
            @PathVariable String variant,
            @PathVariable String id,
            @RequestParam long base,
            HttpServletRequest request) {
        Work work = works.open(variant);
        List<Typed> typed = EditForm.of(request);
        Done done = editing.type(
                work, base, typed, Said.of(request), frames.words(request).with(work.installation()));
        return done.outcome().isRefused()
                ? pages.show(
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        "thing",
                        sheets.of(done.work(), id, typed, done.outcome(), request))
                : to(work.address() + "/things/" + id);
    }

    @GetMapping("/sites/{variant}/things/new")
    ResponseEntity<byte[]> ask(
            @PathVariable String variant,
            @RequestParam String kind,
            @RequestParam(defaultValue = "plan") String side,
            HttpServletRequest request) {
        return pages.show("newThing", newThings.of(works.open(variant), kind, side, List.of(), Outcome.NONE, request));
    }

    @PostMapping("/sites/{variant}/things")
    ResponseEntity<byte[]> add(
            @PathVariable String variant,
            @RequestParam long base,
            @RequestParam String kind,
            @RequestParam String side,
            HttpServletRequest request) {
        Work work = works.open(variant);
        List<Typed> typed = EditForm.of(request);
        String id = newThings.id(work, kind, typed);
        Done done = editing.type(
                work,
                base,
                newThings.placed(typed, kind, side, id),
                Said.of(request),
                frames.words(request).with(work.installation()));
        return done.outcome().isRefused()
                ? pages.show(
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        "newThing",
                        newThings.of(done.work(), kind, side, typed, newThings.unplaced(done.outcome(), id), request))
                : to(work.address() + "/things/" + id);
    }

    private static ResponseEntity<byte[]> to(String address) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, address)
                .build();
    }
}
