package tideover.store.site;

import tideover.engine.site.Site;

/** A site as it was in one revision. */
public record StoredSite(Revision revision, Site site) {}
