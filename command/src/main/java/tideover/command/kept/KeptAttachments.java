package tideover.command.kept;

import java.util.List;
import tideover.store.attachment.Attachment;
import tideover.store.attachment.Privacy;

/** What commands ask of photos and documents. */
public interface KeptAttachments {

    /** Those of a site, the oldest first. */
    List<Attachment> of(KeptVariant variant);

    /**
     * Attaches a file.
     *
     * @param place    a thing, a fact, or empty for the site as a whole
     * @param fileName as it came
     */
    Attachment add(KeptVariant variant, String place, String fileName, byte[] content, Privacy privacy, String note);

    byte[] content(Attachment attachment);

    void remove(Attachment attachment);
}
