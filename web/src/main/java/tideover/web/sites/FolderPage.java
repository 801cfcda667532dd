package tideover.web.sites;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.files.Edit;
import tideover.papers.Wording;
import tideover.store.Store;
import tideover.store.site.StoredSite;
import tideover.web.edit.Editing;
import tideover.web.edit.Editing.Done;
import tideover.web.page.Pages;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** The folder of a site: files, copies, shelf. */
@RestController
final class FolderPage {
    private static final String FOLDER = "/sites/{variant}/folder";
    private static final String DESIGNATION = "house.place.designation";
    private static final int LONGEST = 100;

    private final Store store;
    private final Works works;
    private final Frames frames;
    private final Pages pages;
    private final Folders folders;
    private final Editing editing;
    private final Clock clock;

    FolderPage(Store store, Works works, Frames frames, Pages pages, Folders folders, Editing editing, Clock clock) {
        this.store = store;
        this.works = works;
        this.frames = frames;
        this.pages = pages;
        this.folders = folders;
        this.editing = editing;
        this.clock = clock;
    }

    /** A site opens at its circuits, the desk where most of the work is done. */
    @GetMapping("/sites/{variant}")
    ResponseEntity<byte[]> open(@PathVariable String variant) {
        return to(works.open(variant).address() + "/circuits");
    }

    @GetMapping(FOLDER)
    ResponseEntity<byte[]> show(@PathVariable String variant, HttpServletRequest request) {
        return pages.show("folder", folders.of(works.open(variant), Map.of(), Map.of(), request));
    }

    @PostMapping(FOLDER + "/name")
    ResponseEntity<byte[]> rename(@PathVariable String variant, @RequestParam String name, HttpServletRequest request) {
        Work work = works.open(variant);
        if (!isName(name)) return refused(work, "name", name, "folder.needed.name", request);
        store.sites().rename(work.row().id(), name.strip());
        return to(work.address() + "/folder");
    }

    @PostMapping(FOLDER + "/variants")
    ResponseEntity<byte[]> vary(@PathVariable String variant, @RequestParam String name, HttpServletRequest request) {
        Work work = works.open(variant);
        if (!isName(name)) return refused(work, "variant", name, "folder.needed.name", request);
        StoredSite made = store.sites().newVariant(work.row().id(), name.strip(), editing.entry());
        return to(works.opened(made).address() + "/circuits");
    }

    /** A copy that is a site of its own, under another name. */
    @PostMapping(FOLDER + "/copies")
    ResponseEntity<byte[]> copy(
            @PathVariable String variant, @RequestParam String designation, HttpServletRequest request) {
        Work work = works.open(variant);
        String wanted = designation.strip();
        if (!isName(wanted) || wanted.equals(work.row().designation()))
            return refused(work, "designation", designation, "folder.needed.designation", request);
        Wording words = frames.words(request).with(work.installation());
        Work copied = works.opened(store.sites().duplicate(work.row().id(), editing.entry()));
        String was = work.site().house().place().designation();
        Done done = editing.change(copied, 1, List.of(new Edit(DESIGNATION, was, wanted)), words);
        return to(done.work().address() + "/circuits");
    }

    @PostMapping(FOLDER + "/shelf")
    ResponseEntity<byte[]> shelve(@PathVariable String variant) {
        Work work = works.open(variant);
        store.sites().archive(work.row().site(), clock.instant());
        return to("/");
    }

    @PostMapping(FOLDER + "/desk")
    ResponseEntity<byte[]> unshelve(@PathVariable String variant) {
        Work work = works.open(variant);
        store.sites().unarchive(work.row().site());
        return to(work.address() + "/folder");
    }

    private ResponseEntity<byte[]> refused(
            Work work, String field, String typed, String key, HttpServletRequest request) {
        String problem = frames.words(request).text(key);
        return pages.show(
                HttpStatus.UNPROCESSABLE_CONTENT,
                "folder",
                folders.of(work, Map.of(field, typed), Map.of(field, problem), request));
    }

    private static boolean isName(String typed) {
        String name = typed.strip();
        return !name.isEmpty() && name.length() <= LONGEST && name.chars().noneMatch(Character::isISOControl);
    }

    private static ResponseEntity<byte[]> to(String address) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, address)
                .build();
    }
}
