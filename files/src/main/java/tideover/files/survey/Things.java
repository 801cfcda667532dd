package tideover.files.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Site;
import tideover.engine.site.Status;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;

/** The things of a site by where they are stated. */
public final class Things {
    private final Map<ThingId, Stated> stated = new LinkedHashMap<>();

    public Things(Site site) {
        for (Thing single : List.of(
                site.house().place(), site.house().gridOperator(), site.house().supply()))
            stated.put(
                    single.id(),
                    new Stated(single.id(), ThingKind.sectionOf(single), single, null, null, Status.EXISTING));
        Map<ThingId, Thing> house = byId(site.house().things());
        Map<ThingId, Thing> plan = byId(site.plan().things());
        Map<ThingId, Thing> built = byId(site.built().things());
        Map<ThingId, Status> statuses = site.statuses();
        for (Map<ThingId, Thing> side : List.of(house, plan, built))
            side.forEach((id, thing) -> stated.putIfAbsent(
                    id,
                    new Stated(
                            id,
                            ThingKind.sectionOf(thing),
                            house.get(id),
                            plan.get(id),
                            built.get(id),
                            statuses.getOrDefault(id, Status.EXISTING))));
    }

    private static Map<ThingId, Thing> byId(List<Thing> things) {
        Map<ThingId, Thing> byId = new LinkedHashMap<>();
        for (Thing thing : things) byId.put(thing.id(), thing);
        return byId;
    }

    /** Where a thing is stated. */
    public record Stated(
            ThingId id,
            String section,
            @Nullable Thing house,
            @Nullable Thing plan,
            @Nullable Thing built,
            Status status) {

        /** Whether it stands in no list: place, grid operator, supply. */
        public boolean isSingle() {
            return ThingKind.findBySection(section).isEmpty();
        }

        /** Whether somebody can say a fact of it, of the house or of the plan. */
        boolean isAskedAbout() {
            if (house != null) return true;
            return plan != null && !isSingle() && status != Status.REMOVED;
        }

        /** The one stated first. */
        public Thing any() {
            Thing thing = house != null ? house : plan != null ? plan : built;
            if (thing == null) throw new IllegalStateException(id + " is stated nowhere");
            return thing;
        }
    }

    /** Where the thing of this id is stated. */
    public Optional<Stated> find(ThingId id) {
        return Optional.ofNullable(stated.get(id));
    }

    /** All things: those in no list first, then kind by kind as they are written. */
    public List<Stated> all() {
        List<Stated> all = new ArrayList<>(stated.values());
        all.sort(Comparator.comparingInt(thing -> ThingKind.findBySection(thing.section())
                .map(kind -> kind.ordinal() + 1)
                .orElse(0)));
        return all;
    }

    /** The things of one kind. */
    public List<Stated> of(String section) {
        return stated.values().stream()
                .filter(thing -> thing.section().equals(section))
                .toList();
    }
}
