package tideover.web.work;

import java.util.Optional;
import tideover.engine.assessment.Assessment;
import tideover.engine.installation.Installation;
import tideover.engine.site.Site;
import tideover.engine.site.ThingId;
import tideover.store.site.Revision;
import tideover.store.site.VariantRow;

/**
 * A site at one revision, judged.
 *
 * @param row      the variant as it stands in lists
 * @param revision which state of it
 * @param atOnce   findings that need no slow study
 */
public record Work(VariantRow row, Revision revision, Assessment atOnce) {

    /** The site itself. */
    public Site site() {
        return installation().site();
    }

    /** The site, resolved. */
    public Installation installation() {
        return atOnce.installation();
    }

    /** Where the facts of a thing are; nothing for what is none of the site's things. */
    public Optional<String> address(ThingId thing) {
        return installation().find(thing).map(known -> address() + "/things/" + thing);
    }

    /** Where its pages are. */
    public String address() {
        return "/sites/" + row.id();
    }
}
