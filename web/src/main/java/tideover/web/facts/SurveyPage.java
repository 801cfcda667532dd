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
import tideover.papers.Wording;
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

/** The survey: facts are saved one by one, with or without script. */
@RestController
final class SurveyPage {
    private static final String SURVEY = "/sites/{variant}/survey";

    private final Works works;
    private final Frames frames;
    private final Pages pages;
    private final Surveys surveys;
    private final Editing editing;

    SurveyPage(Works works, Frames frames, Pages pages, Surveys surveys, Editing editing) {
        this.works = works;
        this.frames = frames;
        this.pages = pages;
        this.surveys = surveys;
        this.editing = editing;
    }

    @GetMapping(SURVEY)
    ResponseEntity<byte[]> show(@PathVariable String variant, HttpServletRequest request) {
        return pages.show("survey", surveys.of(works.open(variant), List.of(), Outcome.NONE, request));
    }

    /** One fact; to script its row alone, to a form the page, at the row. */
    @PostMapping(SURVEY)
    ResponseEntity<byte[]> save(
            @PathVariable String variant,
            @RequestParam long base,
            @RequestParam String confirm,
            HttpServletRequest request) {
        Work work = works.open(variant);
        Wording words = frames.words(request).with(work.installation());
        List<Typed> typed = EditForm.of(request);
        Done done = editing.type(work, base, typed, Said.of(request), words);
        boolean refused = done.outcome().isRefused();
        HttpStatus status = refused ? HttpStatus.UNPROCESSABLE_CONTENT : HttpStatus.OK;
        if (request.getHeader("HX-Request") != null) {
            String fresh = refused ? "" : words.text("survey.saved");
            return pages.show(
                    status,
                    "surveyAnswer",
                    surveys.answer(done.work(), confirm, refused ? typed : List.of(), done.outcome(), fresh, request));
        }
        if (refused) return pages.show(status, "survey", surveys.of(done.work(), typed, done.outcome(), request));
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, work.address() + "/survey")
                .build();
    }
}
