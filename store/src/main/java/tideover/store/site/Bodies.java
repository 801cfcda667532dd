package tideover.store.site;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Digest;
import tideover.engine.site.Site;
import tideover.files.EditResult.Edited;
import tideover.files.FieldTable;
import tideover.files.SiteFileResult;
import tideover.files.SiteFileResult.Readable;
import tideover.files.SiteFiles;
import tideover.files.SiteWriter;
import tideover.store.database.Sql;
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;

/**
 * Whole sites under the digest of their canonical JSON, each kept once. Those used last are at hand: whoever edits a site
 * has just read it, and a digest always means the same site. Safe to share between threads.
 */
final class Bodies {
    private static final int AT_HAND = 64;

    private final Map<Digest, Site> atHand = Collections.synchronizedMap(new LinkedHashMap<>(AT_HAND, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Digest, Site> eldest) {
            return size() > AT_HAND;
        }
    });
    private final SiteFiles files;
    private final SiteWriter writer;

    Bodies(FieldTable table) {
        this.files = new SiteFiles(table);
        this.writer = new SiteWriter(table);
    }

    /**
     * The site as it will be read again: a fact left out that has a default is filled in.
     *
     * @throws IllegalArgumentException if it could not be read again
     */
    Site settled(Site site) {
        SiteFileResult again = files.read("site", writer.canonicalJson(site).getBytes(StandardCharsets.UTF_8));
        if (again instanceof Readable readable) return readable.site();
        throw new IllegalArgumentException("a site that cannot be read again: " + again);
    }

    /** Keeps a site that is settled. */
    Digest keep(Site site, Sql sql) {
        String json = writer.canonicalJson(site);
        return keep(new Edited(site, json, Digest.of(json)), sql);
    }

    /** Keeps what an edit made, which is settled. */
    Digest keep(Edited edited, Sql sql) {
        Digest digest = edited.digest();
        sql.update("body/insert")
                .bind("digest", digest.hex())
                .bind("format", SiteFiles.FORMAT)
                .bind("deflated", deflated(edited.canonicalJson().getBytes(StandardCharsets.UTF_8)))
                .execute();
        atHand.put(digest, edited.site());
        return digest;
    }

    /** @throws StoreRefusal if what is kept is damaged or from a newer program */
    Site site(Digest digest, Sql sql) {
        Site known = atHand.get(digest);
        if (known != null) return known;
        Site read = sql.query("body/find")
                .bind("digest", digest.hex())
                .map((row, context) -> site(digest, row.getInt("format"), row.getBytes("deflated")))
                .one();
        atHand.put(digest, read);
        return read;
    }

    /** Reads all that is kept, from the disk. */
    void verify(Sql sql) {
        sql.query("body/all")
                .map((row, context) ->
                        site(new Digest(row.getString("digest")), row.getInt("format"), row.getBytes("deflated")))
                .useStream(sites -> sites.forEach(site -> {}));
    }

    private Site site(Digest digest, int format, byte[] deflated) {
        if (format > SiteFiles.FORMAT) throw StoreRefusal.of(Reason.SITE_NEWER, format, SiteFiles.FORMAT);
        byte[] json = inflated(digest, deflated);
        if (!Digest.of(json).equals(digest)) throw damaged(digest, null);
        // The format is part of the JSON: what an older one needs is done by the reader of site files.
        SiteFileResult result = files.read("site " + digest.shortened(), json);
        if (result instanceof Readable readable) return readable.site();
        throw new IllegalStateException("body %s cannot be read: %s".formatted(digest, result));
    }

    private static byte[] deflated(byte[] plain) {
        Deflater deflater = new Deflater();
        try {
            deflater.setInput(plain);
            deflater.finish();
            ByteArrayOutputStream out = new ByteArrayOutputStream(plain.length / 4);
            byte[] buffer = new byte[8192];
            while (!deflater.finished()) out.write(buffer, 0, deflater.deflate(buffer));
            return out.toByteArray();
        } finally {
            deflater.end();
        }
    }

    private static byte[] inflated(Digest digest, byte[] deflated) {
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(deflated);
            ByteArrayOutputStream out = new ByteArrayOutputStream(deflated.length * 8);
            byte[] buffer = new byte[8192];
            while (!inflater.finished()) {
                int count = inflater.inflate(buffer);
                if (count == 0 && (inflater.needsInput() || inflater.needsDictionary())) throw damaged(digest, null);
                out.write(buffer, 0, count);
            }
            return out.toByteArray();
        } catch (DataFormatException e) {
            throw damaged(digest, e);
        } finally {
            inflater.end();
        }
    }

    private static StoreRefusal damaged(Digest digest, @Nullable Throwable cause) {
        return StoreRefusal.because(cause, Reason.SITE_DAMAGED, digest.shortened());
    }
}
