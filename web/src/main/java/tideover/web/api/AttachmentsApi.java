package tideover.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.engine.site.FactId;
import tideover.engine.site.ThingId;
import tideover.store.Store;
import tideover.store.attachment.Attachment;
import tideover.store.attachment.AttachmentId;
import tideover.store.attachment.AttachmentResult;
import tideover.store.attachment.Attachments;
import tideover.store.attachment.Privacy;
import tideover.store.database.Ids;
import tideover.store.site.SiteId;
import tideover.web.page.Download;
import tideover.web.page.NotHere;
import tideover.web.page.Pages;
import tideover.web.work.Works;

/** Photos and documents as programs read and bring them. */
@RestController
final class AttachmentsApi {
    private final Attachments attachments;
    private final Works works;
    private final Pages pages;
    private final Programs programs;

    AttachmentsApi(Store store, Works works, Pages pages, Programs programs) {
        this.attachments = store.attachments();
        this.works = works;
        this.pages = pages;
        this.programs = programs;
    }

    @GetMapping("/api/sites/{variant}/attachments")
    Answer.Attachments list(@PathVariable String variant) {
        return new Answer.Attachments(
                attachments.of(site(variant)).stream().map(Told::attachment).toList());
    }

    @PostMapping("/api/sites/{variant}/attachments")
    ResponseEntity<?> add(
            @PathVariable String variant,
            @RequestParam String file,
            @RequestParam(defaultValue = "") String place,
            @RequestParam(defaultValue = "ORDINARY") Privacy privacy,
            @RequestParam(defaultValue = "") String note,
            HttpServletRequest request)
            throws IOException {
        requirePlace(place);
        AttachmentResult result =
                attachments.add(site(variant), place, file, SentFile.read(request), privacy, programs.entry(note));
        if (result instanceof AttachmentResult.Kept kept)
            return ResponseEntity.status(HttpStatus.CREATED).body(Told.attachment(kept.attachment()));
        return ResponseEntity.unprocessableContent()
                .body(Told.refused(((AttachmentResult.Refused) result).problems(), pages.words(request)));
    }

    @GetMapping("/api/attachments/{attachment}")
    ResponseEntity<byte[]> content(@PathVariable String attachment) {
        Attachment kept = require(attachment);
        return Download.of(
                MediaType.parseMediaType(kept.mediaType().text()), kept.fileName(), attachments.content(kept.id()));
    }

    @DeleteMapping("/api/attachments/{attachment}")
    ResponseEntity<Void> remove(@PathVariable String attachment) {
        attachments.remove(require(attachment).id());
        return ResponseEntity.noContent().build();
    }

    private static void requirePlace(String place) {
        try {
            if (!place.isEmpty() && !ThingId.isWellFormed(place)) FactId.of(place);
        } catch (IllegalArgumentException e) {
            throw new Wanted.Unreadable("api.parameter", "place");
        }
    }

    private SiteId site(String variant) {
        return works.open(variant).row().site();
    }

    private Attachment require(String id) {
        if (!Ids.isWellFormed(id)) throw new NotHere("attachment " + id);
        return attachments.find(new AttachmentId(id)).orElseThrow(() -> new NotHere("attachment " + id));
    }
}
