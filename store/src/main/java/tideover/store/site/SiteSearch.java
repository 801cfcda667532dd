package tideover.store.site;

/**
 * Which sites a list shows, newest change first.
 *
 * @param text words that each must occur in designation, name of a variant, or name and town of a customer; neither case
 *             nor accents count; empty for all
 * @param most how many rows at most
 */
public record SiteSearch(String text, Shelf shelf, int most) {
    private static final int USUAL = 500;

    /** Where a site lies. */
    public enum Shelf {
        IN_WORK,
        ARCHIVED,
        BOTH
    }

    public SiteSearch {
        if (most < 1) throw new IllegalArgumentException("most %d must be positive".formatted(most));
    }

    /** The sites in work that match. */
    public static SiteSearch of(String text) {
        return new SiteSearch(text, Shelf.IN_WORK, USUAL);
    }
}
