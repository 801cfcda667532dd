package tideover.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.engine.rules.PhraseArg;
import tideover.files.Edit;
import tideover.files.FieldTable;
import tideover.files.SiteEdits;
import tideover.papers.Wording;
import tideover.store.Store;
import tideover.store.site.ChangeResult;
import tideover.store.site.RevisionId;
import tideover.store.site.Sites;
import tideover.store.site.VariantId;
import tideover.web.page.Pages;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Facts and revisions of a site as programs read and change them. */
@RestController
@RequestMapping("/api/sites/{variant}")
final class ChangesApi {
    private final Sites sites;
    private final Works works;
    private final Pages pages;
    private final Told told;
    private final Programs programs;
    private final SiteEdits facts;

    ChangesApi(Store store, Works works, Pages pages, Told told, Programs programs, FieldTable fields) {
        this.sites = store.sites();
        this.works = works;
        this.pages = pages;
        this.told = told;
        this.programs = programs;
        this.facts = new SiteEdits(fields);
    }

    @GetMapping("/facts")
    Answer.Facts facts(@PathVariable String variant, @RequestParam List<String> path) {
        Work work = works.open(variant);
        SiteEdits.Facts known = facts.facts(work.site());
        return new Answer.Facts(
                work.revision().number(),
                path.stream()
                        .map(each -> new Answer.Fact(each, known.find(each).orElse(null)))
                        .toList());
    }

    @PostMapping("/edits")
    ResponseEntity<?> edit(
            @PathVariable String variant, @RequestBody Wanted.Change change, HttpServletRequest request) {
        String note = Objects.requireNonNullElse(change.note(), "");
        long base = Wanted.required("base", change.base());
        List<Edit> edits = Wanted.required("edits", change.edits());
        for (Edit edit : edits) Wanted.required("path", edit == null ? null : edit.path());
        return answer(sites.change(id(variant), base, edits, programs.entry(note)), pages.words(request));
    }

    @PostMapping("/undo")
    ResponseEntity<?> undo(@PathVariable String variant, @RequestBody Wanted.Step step, HttpServletRequest request) {
        long base = Wanted.required("base", step.base());
        return answer(sites.undo(id(variant), base, programs.entry("")), pages.words(request));
    }

    @PostMapping("/redo")
    ResponseEntity<?> redo(@PathVariable String variant, @RequestBody Wanted.Step step, HttpServletRequest request) {
        long base = Wanted.required("base", step.base());
        return answer(sites.redo(id(variant), base, programs.entry("")), pages.words(request));
    }

    @PostMapping("/restore")
    ResponseEntity<?> restore(
            @PathVariable String variant, @RequestBody Wanted.Restore wanted, HttpServletRequest request) {
        long base = Wanted.required("base", wanted.base());
        long number = Wanted.required("revision", wanted.revision());
        RevisionId earlier = works.at(variant, number).revision().id();
        return answer(sites.restore(earlier, base, programs.entry("")), pages.words(request));
    }

    @GetMapping("/revisions")
    Answer.Revisions revisions(@PathVariable String variant) {
        return new Answer.Revisions(
                sites.revisions(id(variant)).stream().map(Told::revision).toList());
    }

    @GetMapping("/difference")
    Answer.Difference difference(
            @PathVariable String variant, @RequestParam long from, @RequestParam(required = false) @Nullable Long to) {
        Work head = works.open(variant);
        RevisionId last = to == null
                ? head.revision().id()
                : works.at(variant, to).revision().id();
        return new Answer.Difference(
                Told.edits(sites.difference(works.at(variant, from).revision().id(), last)));
    }

    /** The variant of an address, if there is one. */
    private VariantId id(String variant) {
        return works.open(variant).row().id();
    }

    private ResponseEntity<?> answer(ChangeResult result, Wording words) {
        if (result instanceof ChangeResult.Saved saved)
            return ResponseEntity.ok(changed(true, works.opened(saved.head()), words));
        if (result instanceof ChangeResult.Unchanged unchanged)
            return ResponseEntity.ok(changed(false, works.opened(unchanged.head()), words));
        if (result instanceof ChangeResult.Refused refused)
            return ResponseEntity.unprocessableContent().body(Told.refused(refused.problems(), words));
        return ResponseEntity.status(HttpStatus.CONFLICT).body(conflicting((ChangeResult.Conflicting) result, words));
    }

    private Answer.Changed changed(boolean saved, Work work, Wording words) {
        return new Answer.Changed(saved, Told.revision(work.revision()), told.findings(work, words));
    }

    private static Answer.Conflicting conflicting(ChangeResult.Conflicting result, Wording words) {
        List<Answer.Conflict> conflicts = result.conflicts().stream()
                .map(each -> new Answer.Conflict(
                        each.edit().path(), each.edit().before(), each.edit().after(), each.now()))
                .toList();
        String sentence = conflicts.isEmpty()
                ? words.text("edit.newer")
                : words.text("api.conflict", PhraseArg.count(conflicts.size()));
        return new Answer.Conflicting(
                List.of(Answer.Problem.of(sentence)),
                Told.revision(result.head().revision()),
                conflicts,
                result.since().stream().map(Told::revision).toList());
    }
}
