package tideover.store.site;

/**
 * One state of one variant.
 *
 * @param number from 1, without a gap
 */
public record RevisionId(VariantId variant, long number) {
    public RevisionId {
        if (number < 1)
            throw new IllegalArgumentException("revision %d of %s: they count from 1".formatted(number, variant));
    }
}
