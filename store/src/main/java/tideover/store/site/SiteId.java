package tideover.store.site;

import tideover.store.database.Ids;

/**
 * The lasting name of a kept site.
 *
 * @param text 16 hexadecimal digits, drawn at random
 */
public record SiteId(String text) {
    public SiteId {
        Ids.require(text);
    }

    static SiteId fresh() {
        return new SiteId(Ids.fresh());
    }

    @Override
    public String toString() {
        return text;
    }
}
