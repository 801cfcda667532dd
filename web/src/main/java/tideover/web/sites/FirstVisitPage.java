package tideover.web.sites;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;
import tideover.files.FieldTable;
import tideover.files.InputProblem;
import tideover.files.SiteFileResult;
import tideover.files.first.FirstAnswers;
import tideover.files.first.FirstSite;
import tideover.files.tables.TypicalValues;
import tideover.papers.Wording;
import tideover.store.Store;
import tideover.store.site.StoredSite;
import tideover.web.edit.Editing;
import tideover.web.page.Pages;

/** The first visit: five questions, and a judged plan to begin with. */
@RestController
final class FirstVisitPage {
    private final FirstVisits visits;
    private final TypicalValues typical;
    private final FieldTable fields;
    private final Store store;
    private final Editing editing;
    private final Pages pages;

    FirstVisitPage(
            FirstVisits visits, TypicalValues typical, FieldTable fields, Store store, Editing editing, Pages pages) {
        this.visits = visits;
        this.typical = typical;
        this.fields = fields;
        this.store = store;
        this.editing = editing;
        this.pages = pages;
    }

    @GetMapping("/sites/new")
    ResponseEntity<byte[]> ask(HttpServletRequest request) {
        return pages.show("first", visits.empty(request));
    }

    @PostMapping("/sites")
    ResponseEntity<byte[]> begin(HttpServletRequest request) {
        Wording words = pages.words(request);
        FirstForm form = FirstForm.of(request);
        Map<String, String> problems = new LinkedHashMap<>();
        FirstAnswers answers = form.read(fields, words, problems);
        SiteFileResult result = new FirstSite(fields, typical, id -> name(id, words)).of(answers);
        if (result instanceof SiteFileResult.Refused refused)
            for (InputProblem problem : refused.problems())
                problems.putIfAbsent(lastPart(problem.field()), words.of(problem.phrase()));
        if (!problems.isEmpty() || !(result instanceof SiteFileResult.Readable readable))
            return pages.show(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    "first",
                    visits.again(form, FirstForm.inOrder(problems), request));
        StoredSite begun = store.sites().create(readable.site(), words.text("sites.firstVariant"), editing.entry());
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, "/sites/" + begun.revision().id().variant() + "/circuits")
                .build();
    }

    /** What a load or part is called on paper. */
    private String name(String id, Wording words) {
        boolean load = typical.loads().stream().anyMatch(one -> one.id().equals(id));
        return words.text((load ? "first.load." : "first.part.") + id);
    }

    private static String lastPart(String field) {
        return field.substring(field.lastIndexOf('.') + 1);
    }
}
