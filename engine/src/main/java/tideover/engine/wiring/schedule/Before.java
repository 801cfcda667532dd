package tideover.engine.wiring.schedule;

import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Plan;
import tideover.engine.site.Site;

/** Where conductors began in the house as found. */
final class Before {

    private final Installation found;
    private final Nodes nodes;
    private final PowerNames names;

    Before(Site site) {
        this.found = Installation.of(new Site(site.house(), Plan.NONE, List.of()));
        this.nodes = new Nodes(found);
        this.names = new PowerNames(found, new Tags(found));
    }

    /** Where it began, if that was elsewhere. */
    Optional<PowerEnd> findElsewhere(Fed fed, Conductor conductor, Nodes.Place now) {
        if (found.findFed(fed.id()).isEmpty()) return Optional.empty();
        return found.findFeed(fed.id(), conductor)
                .map(Edge::from)
                .map(nodes::of)
                .filter(place -> !place.equals(now))
                .map(names::end);
    }
}
