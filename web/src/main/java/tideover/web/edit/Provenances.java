package tideover.web.edit;

import tideover.engine.site.FactSource;
import tideover.engine.site.Origin;

/** Who mostly says a fact. */
public final class Provenances {
    private Provenances() {}

    /** The origin of a fact that was got in the way in which one gets it. */
    public static Origin usual(FactSource source) {
        return Provenance.origin(source);
    }
}
