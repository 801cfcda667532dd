package tideover.web.facts;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.files.FieldTable;
import tideover.papers.Wording;
import tideover.web.edit.EditForm;
import tideover.web.edit.EditWords;
import tideover.web.edit.Editing;
import tideover.web.edit.Editing.Done;
import tideover.web.edit.Outcome.Problem;
import tideover.web.edit.Said;
import tideover.web.edit.Typed;
import tideover.web.facts.EditSheet.Wanted;
import tideover.web.page.Pages;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Where any page of a site sends its edits; it leads back to where they came from. */
@RestController
final class EditsPage {
    private final Works works;
    private final Frames frames;
    private final Pages pages;
    private final Editing editing;
    private final FieldTable fields;

    EditsPage(Works works, Frames frames, Pages pages, Editing editing, FieldTable fields) {
        this.works = works;
        this.frames = frames;
        this.pages = pages;
        this.editing = editing;
        this.fields = fields;
    }

    @PostMapping("/sites/{variant}/edits")
    ResponseEntity<byte[]> change(
            @PathVariable String variant,
            @RequestParam long base,
            @RequestParam(defaultValue = "") String back,
            HttpServletRequest request) {
        Work work = works.open(variant);
        Wording words = frames.words(request).with(work.installation());
        List<Typed> typed = EditForm.of(request);
        Done done = editing.type(work, base, typed, Said.of(request), words);
        String way = Back.to(back, request, work.address());
        if (done.outcome().isRefused())
            return pages.show(HttpStatus.UNPROCESSABLE_CONTENT, "edit", sheet(done, typed, way, words, request));
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, way)
                .build();
    }

    private EditSheet sheet(Done done, List<Typed> typed, String back, Wording words, HttpServletRequest request) {
        EditWords labels = new EditWords(fields, words, done.work().installation());
        List<Wanted> wanted = typed.stream()
                .map(one -> new Wanted(
                        one.path(),
                        one.was(),
                        one.typed(),
                        words.capitalised(labels.label(one.path())),
                        problem(done, one)))
                .toList();
        Map<String, String> hidden = new LinkedHashMap<>();
        for (String name : List.of("origin", "by", "on", "document")) {
            String text = request.getParameter(name);
            if (text != null && !text.isBlank()) hidden.put(name, text);
        }
        return new EditSheet(
                frames.beside(request, words, done.work(), words.text("edit.title")),
                done.work().address(),
                done.work().revision().number(),
                back,
                hidden,
                wanted,
                done.outcome());
    }

    private static String problem(Done done, Typed typed) {
        return done.outcome().problems().stream()
                .filter(problem ->
                        typed.path().equals(problem.path()) || typed.path().endsWith("." + problem.path()))
                .map(Problem::sentence)
                .findFirst()
                .orElse("");
    }
}
