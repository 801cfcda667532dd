package tideover.command.kept;

import java.util.List;
import tideover.command.Desk;
import tideover.store.attachment.Attachment;
import tideover.store.attachment.AttachmentResult;
import tideover.store.attachment.Attachments;
import tideover.store.attachment.Privacy;

/** The photos and documents of the store that this process opened. */
record OwnAttachments(OwnStore store, Attachments attachments, Desk desk) implements KeptAttachments {

    @Override
    public List<Attachment> of(KeptVariant variant) {
        return attachments.of(store.site(variant));
    }

    @Override
    public Attachment add(
            KeptVariant variant, String place, String fileName, byte[] content, Privacy privacy, String note) {
        AttachmentResult result =
                attachments.add(store.site(variant), place, fileName, content, privacy, store.entry(note));
        if (result instanceof AttachmentResult.Kept kept) return kept.attachment();
        throw desk.refusal(((AttachmentResult.Refused) result).problems());
    }

    @Override
    public byte[] content(Attachment attachment) {
        return attachments.content(attachment.id());
    }

    @Override
    public void remove(Attachment attachment) {
        attachments.remove(attachment.id());
    }
}
