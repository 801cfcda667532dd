package tideover.store.site;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.statement.Query;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Digest;
import tideover.store.database.LogEntry;
import tideover.store.database.Times;

/** Rows of the database as records. */
final class Rows {
    private Rows() {}

    static Revision revision(ResultSet row) throws SQLException {
        return new Revision(
                new RevisionId(new VariantId(row.getString("variant_id")), row.getLong("number")),
                new Digest(row.getString("body_digest")),
                RevisionKind.valueOf(row.getString("kind")),
                number(row, "content_of"),
                number(row, "before_position"),
                new LogEntry(row.getString("who"), Times.of(row.getString("recorded_at")), row.getString("note")),
                EditsJson.of(row.getString("edits")));
    }

    static VariantRow variant(ResultSet row) throws SQLException {
        return new VariantRow(
                new VariantId(row.getString("id")),
                new SiteId(row.getString("site_id")),
                row.getString("name"),
                row.getLong("head"),
                row.getString("designation"),
                row.getString("country"),
                Times.of(row.getString("changed_at")));
    }

    /** Sites in the order of the rows, of which there is one for each variant. */
    static List<SiteRow> sites(Query query) {
        Map<SiteId, SiteRow> sites = new LinkedHashMap<>();
        query.map((row, context) -> new SiteRow(
                        new SiteId(row.getString("site_id")),
                        Times.of(row.getString("created_at")),
                        time(row.getString("archived_at")),
                        List.of(variant(row))))
                .forEach(site -> sites.merge(site.id(), site, Rows::joined));
        return List.copyOf(sites.values());
    }

    private static SiteRow joined(SiteRow one, SiteRow other) {
        List<VariantRow> variants = new ArrayList<>(one.variants());
        variants.addAll(other.variants());
        return new SiteRow(one.id(), one.createdAt(), one.archivedAt(), variants);
    }

    private static @Nullable Instant time(@Nullable String text) {
        return text == null ? null : Times.of(text);
    }

    private static @Nullable Long number(ResultSet row, String column) throws SQLException {
        long number = row.getLong(column);
        return row.wasNull() ? null : number;
    }
}
