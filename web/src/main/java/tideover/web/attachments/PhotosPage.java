package tideover.web.attachments;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;
import tideover.papers.Wording;
import tideover.store.Store;
import tideover.store.attachment.Attachment;
import tideover.store.attachment.AttachmentId;
import tideover.store.attachment.AttachmentResult;
import tideover.store.attachment.Privacy;
import tideover.store.database.LogEntry;
import tideover.web.edit.Editing;
import tideover.web.page.NotHere;
import tideover.web.page.Pages;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Photos and documents: brought, shown, handed out, taken away. */
@RestController
final class PhotosPage {
    private static final String PHOTOS = "/sites/{variant}/photos";
    private static final String PHOTO = PHOTOS + "/{id}";
    /** Should a browser take it for a page after all, nothing in it runs or loads. */
    private static final String SANDBOX = "default-src 'none'; sandbox";

    private final Store store;
    private final Works works;
    private final Frames frames;
    private final Pages pages;
    private final Photos photos;
    private final Editing editing;

    PhotosPage(Store store, Works works, Frames frames, Pages pages, Photos photos, Editing editing) {
        this.store = store;
        this.works = works;
        this.frames = frames;
        this.pages = pages;
        this.photos = photos;
        this.editing = editing;
    }

    @GetMapping(PHOTOS)
    ResponseEntity<byte[]> list(
            @PathVariable String variant, @RequestParam(defaultValue = "") String at, HttpServletRequest request) {
        if (!Photos.isPlace(at)) throw new NotHere("place " + at);
        return pages.show("photos", photos.of(works.open(variant), at, List.of(), request));
    }

    /** Several files at once; those that cannot be kept are told, the others are there. */
    @PostMapping(PHOTOS)
    ResponseEntity<byte[]> bring(
            @PathVariable String variant,
            @RequestParam(defaultValue = "") String at,
            @RequestParam List<MultipartFile> file,
            @RequestParam(defaultValue = "ORDINARY") Privacy privacy,
            @RequestParam(defaultValue = "") String note,
            HttpServletRequest request)
            throws IOException {
        Work work = works.open(variant);
        if (!Photos.isPlace(at)) throw new NotHere("place " + at);
        Wording words = frames.words(request).with(work.installation());
        List<String> problems = new ArrayList<>();
        for (MultipartFile one : file) {
            String name = one.getOriginalFilename();
            LogEntry entry = editing.entry();
            AttachmentResult result = store.attachments()
                    .add(
                            work.row().site(),
                            at,
                            name == null ? "" : name,
                            one.getBytes(),
                            privacy,
                            new LogEntry(entry.who(), entry.when(), note));
            if (result instanceof AttachmentResult.Refused refused)
                refused.problems().forEach(problem -> problems.add(words.of(problem.phrase())));
        }
        if (!problems.isEmpty())
            return pages.show(HttpStatus.UNPROCESSABLE_CONTENT, "photos", photos.of(work, at, problems, request));
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, work.address() + "/photos")
                .build();
    }

    @GetMapping(PHOTO + "/file")
    ResponseEntity<byte[]> file(@PathVariable String variant, @PathVariable String id) {
        Attachment attachment = attachment(variant, id);
        ContentDisposition saved = ContentDisposition.attachment()
                .filename(attachment.fileName(), java.nio.charset.StandardCharsets.UTF_8)
                .build();
        return content(attachment)
                .header(HttpHeaders.CONTENT_DISPOSITION, saved.toString())
                .body(bytes(attachment));
    }

    /** For pictures in pages of ours; whoever opens it by itself sees the picture and nothing else. */
    @GetMapping(PHOTO + "/picture")
    ResponseEntity<byte[]> picture(@PathVariable String variant, @PathVariable String id) {
        Attachment attachment = attachment(variant, id);
        if (attachment.mediaType() == tideover.store.attachment.MediaType.PDF) throw new NotHere("picture " + id);
        return content(attachment)
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline")
                .body(bytes(attachment));
    }

    private static ResponseEntity.BodyBuilder content(Attachment attachment) {
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(attachment.mediaType().text()))
                .header("Content-Security-Policy", SANDBOX)
                .header("X-Content-Type-Options", "nosniff")
                .header("Cross-Origin-Resource-Policy", "same-origin")
                // It never changes, and is for this browser only.
                .header(HttpHeaders.CACHE_CONTROL, "private, max-age=86400, immutable");
    }

    @PostMapping(PHOTO + "/remove")
    ResponseEntity<byte[]> remove(@PathVariable String variant, @PathVariable String id) {
        store.attachments().remove(attachment(variant, id).id());
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, works.open(variant).address() + "/photos")
                .build();
    }

    private byte[] bytes(Attachment attachment) {
        return store.attachments().content(attachment.id());
    }

    /** One of this site; those of others are not here. */
    private Attachment attachment(String variant, String id) {
        Work work = works.open(variant);
        try {
            return store.attachments()
                    .find(new AttachmentId(id))
                    .filter(one -> one.site().equals(work.row().site()))
                    .orElseThrow(() -> new NotHere("attachment " + id));
        } catch (IllegalArgumentException e) {
            throw new NotHere("attachment " + id);
        }
    }
}
