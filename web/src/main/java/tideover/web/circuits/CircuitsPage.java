package tideover.web.circuits;

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
import tideover.papers.Wording;
import tideover.web.edit.EditForm;
import tideover.web.edit.Editing;
import tideover.web.edit.Editing.Done;
import tideover.web.edit.Outcome;
import tideover.web.edit.Typed;
import tideover.web.page.Pages;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** The circuits sheet and what is done on it. */
@RestController
final class CircuitsPage {
    private static final String SHEET = "/sites/{variant}/circuits";

    private final Works works;
    private final Pages pages;
    private final Frames frames;
    private final Sheets sheets;
    private final Editing editing;

    CircuitsPage(Works works, Pages pages, Frames frames, Sheets sheets, Editing editing) {
        this.works = works;
        this.pages = pages;
        this.frames = frames;
        this.sheets = sheets;
        this.editing = editing;
    }

    @GetMapping(SHEET)
    ResponseEntity<byte[]> show(
            @PathVariable String variant,
            @RequestParam(defaultValue = "plan") String side,
            HttpServletRequest request) {
        return pages.show("circuits", sheets.of(works.open(variant), side, Outcome.NONE, request));
    }

    /** One change or many: a cell, a fill, a drag, a circuit added or taken out. */
    @PostMapping(SHEET)
    ResponseEntity<byte[]> edit(@PathVariable String variant, @RequestParam long base, HttpServletRequest request) {
        Work work = works.open(variant);
        return answer(editing.type(work, base, EditForm.of(request), words(work, request)), request);
    }

    /** What a table of another program left on the clipboard, laid over the sheet from one cell on. */
    @PostMapping(SHEET + "/paste")
    ResponseEntity<byte[]> paste(
            @PathVariable String variant,
            @RequestParam long base,
            @RequestParam String at,
            @RequestParam String text,
            @RequestParam(defaultValue = "plan") String side,
            HttpServletRequest request) {
        Work work = works.open(variant);
        List<Typed> typed = Paste.of(work, sheets.of(work, side, Outcome.NONE, request), at, text);
        return answer(editing.type(work, base, typed, words(work, request)), request);
    }

    @PostMapping(SHEET + "/undo")
    ResponseEntity<byte[]> undo(@PathVariable String variant, @RequestParam long base, HttpServletRequest request) {
        Work work = works.open(variant);
        return answer(editing.undo(work, base, words(work, request)), request);
    }

    @PostMapping(SHEET + "/redo")
    ResponseEntity<byte[]> redo(@PathVariable String variant, @RequestParam long base, HttpServletRequest request) {
        Work work = works.open(variant);
        return answer(editing.redo(work, base, words(work, request)), request);
    }

    /** To script the sheet alone; to a form the page, which a reload does not send again. */
    private ResponseEntity<byte[]> answer(Done done, HttpServletRequest request) {
        String side = request.getParameter("side") == null ? "plan" : request.getParameter("side");
        Sheet sheet = sheets.of(done.work(), side, done.outcome(), request);
        boolean script = request.getHeader("HX-Request") != null;
        if (script) return pages.show("sheetAnswer", sheet);
        if (done.outcome().isRefused()) return pages.show(HttpStatus.UNPROCESSABLE_CONTENT, "circuits", sheet);
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, done.work().address() + "/circuits?side=" + sheet.side())
                .build();
    }

    private Wording words(Work work, HttpServletRequest request) {
        return frames.words(request).with(work.installation());
    }
}
