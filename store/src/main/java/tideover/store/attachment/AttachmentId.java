package tideover.store.attachment;

import tideover.store.database.Ids;

/**
 * The lasting name of an attachment.
 *
 * @param text 16 hexadecimal digits, drawn at random
 */
public record AttachmentId(String text) {
    public AttachmentId {
        Ids.require(text);
    }

    static AttachmentId fresh() {
        return new AttachmentId(Ids.fresh());
    }

    @Override
    public String toString() {
        return text;
    }
}
