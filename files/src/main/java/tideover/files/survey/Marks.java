package tideover.files.survey;

import tideover.engine.site.FactId;
import tideover.engine.site.Origin;
import tideover.engine.site.Origins;
import tideover.engine.site.Site;
import tideover.files.FieldTable;
import tideover.files.SiteEdits;

/** How sure the facts of one site are. For one thread: origins remember what they were asked. */
public final class Marks {
    private final SiteEdits.Facts facts;
    private final Origins origins;
    private final Waiting waiting;

    public Marks(Site site, FieldTable fields, Waiting waiting) {
        this.facts = new SiteEdits(fields).facts(site);
        this.origins = site.origins();
        this.waiting = waiting;
    }

    /** How sure a fact is, where it is stated last. */
    public Mark of(FactId fact) {
        if (facts.find(fact.toString()).isEmpty()) return waiting.findings(fact) > 0 ? Mark.MISSING : Mark.NOT_ASKED;
        return origins.of(fact) == Origin.ASSUMED ? Mark.ASSUMED : Mark.KNOWN;
    }

    /** What stands at the paths of the site. */
    public SiteEdits.Facts facts() {
        return facts;
    }
}
