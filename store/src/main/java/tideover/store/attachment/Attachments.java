package tideover.store.attachment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import tideover.engine.rules.Digest;
import tideover.engine.site.FactId;
import tideover.engine.site.ThingId;
import tideover.store.database.Database;
import tideover.store.database.LogEntry;
import tideover.store.database.PlainText;
import tideover.store.database.Sql;
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;
import tideover.store.database.Times;
import tideover.store.site.SiteId;

/**
 * The photos and documents of a store. What a method here answers for is on the disk when it returns. Safe to share
 * between threads.
 */
public final class Attachments {
    /** Largest file that is kept [bytes]. */
    public static final int LARGEST_BYTES = 20 * 1024 * 1024;

    private static final int LONGEST_NOTE = 400;

    private final Database database;

    public Attachments(Database database) {
        this.database = database;
    }

    /**
     * Attaches a file: told apart by its content, cleaned, and kept.
     *
     * @param place    a thing, a fact, or empty for the site as a whole
     * @param fileName as it came
     */
    public AttachmentResult add(
            SiteId site, String place, String fileName, byte[] content, Privacy privacy, LogEntry entry) {
        requirePlace(place);
        String name = FileName.cleaned(fileName);
        if (content.length == 0) return AttachmentProblem.EMPTY.refused(name);
        if (content.length > LARGEST_BYTES)
            return AttachmentProblem.TOO_LARGE.refused(name, Integer.toString(LARGEST_BYTES >> 20));
        MediaType type = MediaType.findOf(content).orElse(null);
        if (type == null)
            return (MediaType.isHeic(content) ? AttachmentProblem.TYPE_HEIC : AttachmentProblem.TYPE_UNKNOWN)
                    .refused(name);
        String extension = FileName.extension(name);
        if (!extension.isEmpty() && !type.hasExtension(extension))
            return AttachmentProblem.ENDING_OTHER.refused(name, "." + extension, type.name(), "." + type.extension());
        byte[] cleaned;
        try {
            cleaned = cleaned(type, content);
        } catch (DamagedFile e) {
            return AttachmentProblem.DAMAGED.refused(name);
        }
        Attachment attachment = new Attachment(
                AttachmentId.fresh(),
                site,
                place,
                FileName.withExtension(name, type),
                type,
                Digest.of(cleaned),
                cleaned.length,
                privacy,
                new LogEntry(entry.who(), entry.when(), PlainText.line(entry.note(), LONGEST_NOTE)));
        return database.write(sql -> kept(attachment, cleaned, sql));
    }

    private static byte[] cleaned(MediaType type, byte[] content) throws DamagedFile {
        return switch (type) {
            case JPEG -> JpegCleaner.clean(content);
            case PNG -> PngCleaner.clean(content);
            case WEBP -> WebpCleaner.clean(content);
            // A document is evidence as it is; it is only ever handed out as a download.
            case PDF -> content;
        };
    }

    private static AttachmentResult kept(Attachment attachment, byte[] content, Sql sql) {
        String site = attachment.site().text();
        if (sql.query("site/find").bind("site", site).mapToMap().list().isEmpty())
            throw new NoSuchElementException("there is no site " + site);
        sql.update("attachment/keep_body")
                .bind("digest", attachment.digest().hex())
                .bind("sizeBytes", attachment.sizeBytes())
                .bind("content", content)
                .execute();
        sql.update("attachment/insert")
                .bind("id", attachment.id().text())
                .bind("site", site)
                .bind("place", attachment.place())
                .bind("fileName", attachment.fileName())
                .bind("mediaType", attachment.mediaType().name())
                .bind("body", attachment.digest().hex())
                .bind("privacy", attachment.privacy().name())
                .bind("who", attachment.entry().who())
                .bind("addedAt", Times.text(attachment.entry().when()))
                .bind("note", attachment.entry().note())
                .execute();
        return new AttachmentResult.Kept(attachment);
    }

    public Optional<Attachment> find(AttachmentId id) {
        return database.read(sql -> find(id, sql));
    }

    /** Those of a site, the oldest first. */
    public List<Attachment> of(SiteId site) {
        return database.read(sql -> sql.query("attachment/of_site")
                .bind("site", site.text())
                .map((row, context) -> attachment(row))
                .list());
    }

    /**
     * The content of an attachment.
     *
     * @throws StoreRefusal if it is no longer what was kept
     */
    public byte[] content(AttachmentId id) {
        return database.read(sql -> {
            Attachment attachment = require(id, sql);
            byte[] content = sql.query("attachment/content")
                    .bind("digest", attachment.digest().hex())
                    .mapTo(byte[].class)
                    .one();
            if (!Digest.of(content).equals(attachment.digest()))
                throw StoreRefusal.of(Reason.ATTACHMENT_DAMAGED, attachment.fileName());
            return content;
        });
    }

    /**
     * Reads the content of every attachment from the disk.
     *
     * @throws StoreRefusal at the first that is no longer what was kept
     */
    public void verify() {
        database.read(sql -> {
            sql.query("attachment/bodies")
                    .map((row, context) -> {
                        String digest = row.getString("digest");
                        if (!Digest.of(row.getBytes("content")).hex().equals(digest))
                            throw StoreRefusal.of(Reason.ATTACHMENT_DAMAGED, digest);
                        return digest;
                    })
                    .useStream(digests -> digests.forEach(digest -> {}));
            return sql;
        });
    }

    /** Takes an attachment away; its content goes with the last one that has it. */
    public void remove(AttachmentId id) {
        database.write(sql -> {
            require(id, sql);
            sql.update("attachment/delete").bind("id", id.text()).execute();
            return sql.update("attachment/drop_bodies").execute();
        });
    }

    private static Attachment require(AttachmentId id, Sql sql) {
        return find(id, sql).orElseThrow(() -> new NoSuchElementException("there is no attachment " + id));
    }

    private static Optional<Attachment> find(AttachmentId id, Sql sql) {
        return sql.query("attachment/find")
                .bind("id", id.text())
                .map((row, context) -> attachment(row))
                .findOne();
    }

    private static Attachment attachment(ResultSet row) throws SQLException {
        return new Attachment(
                new AttachmentId(row.getString("id")),
                new SiteId(row.getString("site_id")),
                row.getString("place"),
                row.getString("file_name"),
                MediaType.valueOf(row.getString("media_type")),
                new Digest(row.getString("body_digest")),
                row.getLong("size_bytes"),
                Privacy.valueOf(row.getString("privacy")),
                new LogEntry(row.getString("who"), Times.of(row.getString("added_at")), row.getString("note")));
    }

    private static void requirePlace(String place) {
        if (place.isEmpty() || ThingId.isWellFormed(place)) return;
        // Throws where it is no fact either.
        FactId.of(place);
    }
}
