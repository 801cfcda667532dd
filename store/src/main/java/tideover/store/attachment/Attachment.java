package tideover.store.attachment;

import tideover.engine.rules.Digest;
import tideover.store.database.LogEntry;
import tideover.store.site.SiteId;

/**
 * A photo or document at a place of a site; its content is fetched apart.
 *
 * @param place     a thing, such as {@code main-board}, or a fact, such as {@code oven.cable.lengthM}; empty for the site
 *                  as a whole
 * @param fileName  cleaned; its ending fits the content
 * @param digest    of the content
 * @param sizeBytes of the content
 * @param entry     who attached it, when, and what they said
 */
public record Attachment(
        AttachmentId id,
        SiteId site,
        String place,
        String fileName,
        MediaType mediaType,
        Digest digest,
        long sizeBytes,
        Privacy privacy,
        LogEntry entry) {}
