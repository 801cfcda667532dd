package tideover.store.site;

import java.time.Instant;

/**
 * A variant as it stands in a list.
 *
 * @param head        number of its newest revision
 * @param designation what the site is called on paper; empty where nobody said
 * @param country     two letters; empty where nobody said
 */
public record VariantRow(
        VariantId id, SiteId site, String name, long head, String designation, String country, Instant changedAt) {

    /** Its newest revision. */
    public RevisionId headId() {
        return new RevisionId(id, head);
    }
}
