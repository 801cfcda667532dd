package tideover.web.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Site;
import tideover.engine.site.Status;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;

/** The things of a site by where they are stated. */
final class Things {
    private final Site site;

    Things(Site site) {
        this.site = site;
    }

    /** Where a thing is stated. */
    record Stated(
            ThingId id,
            String section,
            @Nullable Thing house,
            @Nullable Thing plan,
            @Nullable Thing built,
            Status status) {

        /** Whether it stands in no list: place, grid operator, supply. */
        boolean isSingle() {
            return ThingKind.findBySection(section).isEmpty();
        }

        /** The one stated first. */
        Thing any() {
            Thing thing = house != null ? house : plan != null ? plan : built;
            if (thing == null) throw new IllegalStateException(id + " is stated nowhere");
            return thing;
        }
    }

    Optional<Stated> find(ThingId id) {
        for (Thing single : singles())
            if (single.id().equals(id))
                return Optional.of(new Stated(id, ThingKind.sectionOf(single), single, null, null, Status.EXISTING));
        Thing house = in(site.house().things(), id);
        Thing plan = in(site.plan().things(), id);
        Thing built = in(site.built().things(), id);
        Thing any = house != null ? house : plan != null ? plan : built;
        if (any == null) return Optional.empty();
        Status status = site.statuses().getOrDefault(id, Status.EXISTING);
        return Optional.of(new Stated(id, ThingKind.sectionOf(any), house, plan, built, status));
    }

    private List<Thing> singles() {
        return List.of(
                site.house().place(), site.house().gridOperator(), site.house().supply());
    }

    private static @Nullable Thing in(List<Thing> things, ThingId id) {
        for (Thing thing : things) if (thing.id().equals(id)) return thing;
        return null;
    }

    /** All things: those in no list first, then kind by kind as they are written. */
    List<Stated> all() {
        List<Stated> all = new ArrayList<>();
        for (Thing single : singles()) find(single.id()).ifPresent(all::add);
        for (ThingKind kind : ThingKind.values())
            for (ThingId id : site.statuses().keySet())
                find(id).filter(stated -> stated.section().equals(kind.section()))
                        .ifPresent(all::add);
        return all;
    }
}
