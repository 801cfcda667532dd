package tideover.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.engine.assessment.Assessment;
import tideover.files.FieldTable;
import tideover.files.SiteWriter;
import tideover.papers.Wording;
import tideover.papers.json.AssessmentJson;
import tideover.store.Store;
import tideover.store.site.ImportResult;
import tideover.store.site.SiteSearch;
import tideover.store.site.SiteSearch.Shelf;
import tideover.web.page.Download;
import tideover.web.page.Pages;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Sites as programs read and bring them. */
@RestController
@RequestMapping("/api/sites")
final class SitesApi {
    private static final int MOST = 500;
    private static final MediaType YAML = MediaType.parseMediaType("application/yaml");

    private final Store store;
    private final Works works;
    private final Pages pages;
    private final Told told;
    private final Programs programs;
    private final SiteWriter writer;

    SitesApi(Store store, Works works, Pages pages, Told told, Programs programs, FieldTable fields) {
        this.store = store;
        this.works = works;
        this.pages = pages;
        this.told = told;
        this.programs = programs;
        this.writer = new SiteWriter(fields);
    }

    @GetMapping
    Answer.Sites list(
            @RequestParam(defaultValue = "") String text, @RequestParam(defaultValue = "IN_WORK") Shelf shelf) {
        return new Answer.Sites(store.sites().list(new SiteSearch(text.strip(), shelf, MOST)).stream()
                .map(Told::site)
                .toList());
    }

    @PostMapping
    ResponseEntity<?> bring(
            @RequestParam(defaultValue = "") String file,
            @RequestParam(defaultValue = "") String name,
            HttpServletRequest request)
            throws IOException {
        Wording words = pages.words(request);
        ImportResult result = store.sites()
                .importFile(
                        file.isBlank() ? words.text("sites.file") : file,
                        SentFile.read(request),
                        name.isBlank() ? words.text("sites.firstVariant") : name,
                        programs.entry(""));
        if (result instanceof ImportResult.Imported imported)
            return ResponseEntity.status(HttpStatus.CREATED).body(told.head(works.opened(imported.head()), words));
        return ResponseEntity.unprocessableContent()
                .body(Told.refused(((ImportResult.Refused) result).problems(), words));
    }

    @GetMapping("/{variant}")
    Answer.Head head(@PathVariable String variant, HttpServletRequest request) {
        return told.head(works.open(variant), pages.words(request));
    }

    /** The site as a person would write it, without loss. */
    @GetMapping("/{variant}/site.yaml")
    ResponseEntity<byte[]> yaml(@PathVariable String variant, @RequestParam(required = false) @Nullable Long revision) {
        Work work = at(variant, revision);
        return Download.text(YAML, name(work) + ".yaml", writer.yaml(work.site()));
    }

    /** The one JSON text of the site, of which the digest is. */
    @GetMapping("/{variant}/site.json")
    ResponseEntity<byte[]> json(@PathVariable String variant, @RequestParam(required = false) @Nullable Long revision) {
        Work work = at(variant, revision);
        return Download.text(MediaType.APPLICATION_JSON, name(work) + ".json", writer.canonicalJson(work.site()));
    }

    private Work at(String variant, @Nullable Long revision) {
        return revision == null ? works.open(variant) : works.at(variant, revision);
    }

    private static String name(Work work) {
        return Download.name(work.row().designation(), "site");
    }

    /** All findings in the form of the command line; accepted and not final while slow ones are on the way. */
    @GetMapping("/{variant}/findings")
    ResponseEntity<byte[]> findings(@PathVariable String variant, HttpServletRequest request) {
        Work work = works.open(variant);
        Assessment shown = works.soFar(work);
        boolean pending = works.whole(work).isEmpty() && !works.hasFailed(work);
        String text =
                new AssessmentJson(pages.words(request), shown, work.revision().digest()).text();
        return ResponseEntity.status(pending ? HttpStatus.ACCEPTED : HttpStatus.OK)
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}
