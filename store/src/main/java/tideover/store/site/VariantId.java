package tideover.store.site;

import tideover.store.database.Ids;

/**
 * The lasting name of one variant of a kept site.
 *
 * @param text 16 hexadecimal digits, drawn at random
 */
public record VariantId(String text) {
    public VariantId {
        Ids.require(text);
    }

    static VariantId fresh() {
        return new VariantId(Ids.fresh());
    }

    @Override
    public String toString() {
        return text;
    }
}
