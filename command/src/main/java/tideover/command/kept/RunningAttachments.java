package tideover.command.kept;

import static tideover.command.kept.WorkbenchCalls.encoded;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import tideover.engine.rules.Digest;
import tideover.store.attachment.Attachment;
import tideover.store.attachment.AttachmentId;
import tideover.store.attachment.MediaType;
import tideover.store.attachment.Privacy;
import tideover.store.database.LogEntry;
import tideover.store.site.SiteId;

/** The photos and documents of a workbench that runs. */
record RunningAttachments(WorkbenchCalls calls) implements KeptAttachments {

    @Override
    public List<Attachment> of(KeptVariant variant) {
        return calls
                .json(calls.reading(RunningWorkbench.address(variant, "/attachments")))
                .at("attachments")
                .items()
                .stream()
                .map(RunningAttachments::attachment)
                .toList();
    }

    @Override
    public Attachment add(
            KeptVariant variant, String place, String fileName, byte[] content, Privacy privacy, String note) {
        String path = RunningWorkbench.address(variant, "/attachments")
                + "?file=" + encoded(fileName) + "&place=" + encoded(place) + "&privacy=" + privacy + "&note="
                + encoded(note);
        return attachment(calls.json(calls.file(path, content)));
    }

    @Override
    public byte[] content(Attachment attachment) {
        return calls.bytes(calls.reading("/attachments/" + attachment.id()));
    }

    @Override
    public void remove(Attachment attachment) {
        calls.json(calls.request("/attachments/" + attachment.id()).DELETE());
    }

    private static Attachment attachment(JsonValue json) {
        String type = json.at("mediaType").text();
        return new Attachment(
                new AttachmentId(json.at("attachment").text()),
                new SiteId(json.at("site").text()),
                json.at("place").text(),
                json.at("fileName").text(),
                Arrays.stream(MediaType.values())
                        .filter(known -> known.text().equals(type))
                        .findFirst()
                        .orElseThrow(),
                new Digest(json.at("digest").text()),
                json.at("sizeBytes").number(),
                json.at("personal").isTrue() ? Privacy.PERSONAL : Privacy.ORDINARY,
                new LogEntry(
                        json.at("who").text(),
                        Instant.parse(json.at("added").text()),
                        json.at("note").text()));
    }
}
