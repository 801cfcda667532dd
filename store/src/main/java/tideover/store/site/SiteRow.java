package tideover.store.site;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A site as it stands in a list.
 *
 * @param archivedAt nothing while it is worked on
 * @param variants   in the order in which they were made; at least one
 */
public record SiteRow(
        SiteId id, Instant createdAt, @Nullable Instant archivedAt, List<VariantRow> variants) {
    public SiteRow {
        variants = List.copyOf(variants);
        if (variants.isEmpty()) throw new IllegalArgumentException("site %s has no variant".formatted(id));
    }

    /** The variant that was changed last. */
    public VariantRow latest() {
        VariantRow latest = variants.get(0);
        for (VariantRow variant : variants) if (variant.changedAt().isAfter(latest.changedAt())) latest = variant;
        return latest;
    }
}
