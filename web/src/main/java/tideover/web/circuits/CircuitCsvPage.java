package tideover.web.circuits;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;
import tideover.engine.rules.PhraseArg;
import tideover.files.FieldTable;
import tideover.files.InputProblem;
import tideover.files.cells.CircuitCsv;
import tideover.files.cells.CircuitCsv.Listed;
import tideover.files.cells.CircuitCsvResult;
import tideover.papers.Wording;
import tideover.web.edit.Editing;
import tideover.web.edit.Editing.Done;
import tideover.web.edit.Outcome;
import tideover.web.edit.Outcome.Problem;
import tideover.web.page.Download;
import tideover.web.page.Pages;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** The circuits as a list for spreadsheets: taken along and brought back. */
@RestController
final class CircuitCsvPage {
    private static final MediaType CSV = new MediaType("text", "csv", StandardCharsets.UTF_8);

    private final Works works;
    private final Pages pages;
    private final Frames frames;
    private final Sheets sheets;
    private final Editing editing;
    private final CircuitCsv csv;

    CircuitCsvPage(Works works, Pages pages, Frames frames, Sheets sheets, Editing editing, FieldTable fields) {
        this.works = works;
        this.pages = pages;
        this.frames = frames;
        this.sheets = sheets;
        this.editing = editing;
        this.csv = new CircuitCsv(fields);
    }

    @GetMapping("/sites/{variant}/circuits.csv")
    ResponseEntity<byte[]> take(@PathVariable String variant) {
        Work work = works.open(variant);
        String name = Download.name(work.row().designation(), "site") + "-circuits.csv";
        return Download.text(CSV, name, csv.write(work.site(), Listed.LAST));
    }

    /** Compares the list with the site: what differs is changed, what is new added; a row left out changes nothing. */
    @PostMapping("/sites/{variant}/circuits.csv")
    ResponseEntity<byte[]> bring(
            @PathVariable String variant,
            @RequestParam long base,
            @RequestParam MultipartFile file,
            HttpServletRequest request)
            throws IOException {
        Work work = works.open(variant);
        Wording words = frames.words(request).with(work.installation());
        String name = file.getOriginalFilename() == null ? "circuits.csv" : file.getOriginalFilename();
        CircuitCsvResult result = csv.read(work.site(), Listed.LAST, name, file.getBytes());
        if (result instanceof CircuitCsvResult.Refused refused)
            return answer(
                    work,
                    new Outcome(
                            "",
                            refused.problems().stream()
                                    .map(problem -> problem(problem, words))
                                    .toList(),
                            List.of()),
                    request);
        CircuitCsvResult.Read read = (CircuitCsvResult.Read) result;
        Done done = editing.change(work, base, read.edits(), words);
        String said =
                words.text("circuits.brought", PhraseArg.count(read.edits().size()), PhraseArg.count(read.added()));
        Outcome outcome = done.outcome().isRefused() ? done.outcome() : new Outcome(said, List.of(), List.of());
        return answer(done.work(), outcome, request);
    }

    private static Problem problem(InputProblem problem, Wording words) {
        String sentence = words.of(problem.phrase());
        boolean whole = problem.line() == 0;
        return new Problem(
                problem.field(),
                whole
                        ? sentence
                        : words.text(
                                "circuits.csv.at",
                                Integer.toString(problem.line()),
                                Integer.toString(problem.column()),
                                sentence),
                "");
    }

    private ResponseEntity<byte[]> answer(Work work, Outcome outcome, HttpServletRequest request) {
        HttpStatus status = outcome.isRefused() ? HttpStatus.UNPROCESSABLE_CONTENT : HttpStatus.OK;
        return pages.show(status, "circuits", sheets.of(work, "plan", outcome, request));
    }
}
