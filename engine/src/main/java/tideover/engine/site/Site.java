package tideover.engine.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One house: what was found, what is planned, and who or what says so.
 *
 * @param house    as found
 * @param plan     what becomes of it
 * @param built    where what was built differs from the plan
 * @param evidence where facts come from; a fact without evidence is assumed
 */
public record Site(House house, Plan plan, Built built, List<Evidence> evidence) {
    public Site {
        evidence = List.copyOf(evidence);
    }

    /** A site of which nothing is built yet, or all as planned. */
    public Site(House house, Plan plan, List<Evidence> evidence) {
        this(house, plan, Built.AS_PLANNED, evidence);
    }

    /** A copy as if everything had been built as planned. */
    public Site asPlanned() {
        return built.isAsPlanned() ? this : new Site(house, plan, evidence);
    }

    /**
     * The things as they will be once the plan is carried out: found things with the planned facts laid over them, new
     * ones behind them, removed ones gone; in the order in which they are written. What was built otherwise counts as it
     * was built.
     */
    public Map<ThingId, Thing> planned() {
        Map<ThingId, Thing> things = new LinkedHashMap<>();
        for (Thing found : house.things()) things.put(found.id(), found);
        for (Thing planned : plan.things()) things.merge(planned.id(), planned, Overlay::of);
        plan.removed().forEach(things::remove);
        for (ThingId id : built.swapped()) things.computeIfPresent(id, (swapped, planned) -> Overlay.placeOf(planned));
        for (Thing thing : built.things()) things.merge(thing.id(), thing, Overlay::of);
        built.removed().forEach(things::remove);
        return things;
    }

    /** What becomes of each thing, removed ones included. */
    public Map<ThingId, Status> statuses() {
        Map<ThingId, Status> statuses = new LinkedHashMap<>();
        for (Thing found : house.things()) statuses.put(found.id(), Status.EXISTING);
        for (Thing planned : plan.things()) statuses.merge(planned.id(), Status.NEW, (found, stated) -> Status.ALTERED);
        for (ThingId id : plan.removed()) statuses.put(id, Status.REMOVED);
        for (Thing thing : built.things())
            statuses.merge(
                    thing.id(), Status.NEW, (known, stated) -> known == Status.EXISTING ? Status.ALTERED : known);
        for (ThingId id : built.swapped()) statuses.computeIfPresent(id, (swapped, known) -> Status.NEW);
        for (ThingId id : built.removed()) statuses.put(id, Status.REMOVED);
        return statuses;
    }

    /** Where each fact comes from. */
    public Origins origins() {
        return Origins.of(this);
    }

    /**
     * A copy in which one fact has another value. A thing stated as built is changed there, one stated in the plan there,
     * any other in the house.
     *
     * @param value of the field's own type, or nothing to forget the fact
     * @throws IllegalArgumentException if there is no such thing or field, or the value is of another type
     */
    public Site with(FactId fact, @Nullable Object value) {
        ThingId id = fact.thing();
        if (id.equals(ThingId.SUPPLY))
            return withHouse(new House(
                    house.place(),
                    house.gridOperator(),
                    Overlay.with(house.supply(), fact.field(), value),
                    house.things()));
        if (id.equals(ThingId.GRID_OPERATOR))
            return withHouse(new House(
                    house.place(),
                    Overlay.with(house.gridOperator(), fact.field(), value),
                    house.supply(),
                    house.things()));
        if (id.equals(ThingId.PLACE))
            return withHouse(new House(
                    Overlay.with(house.place(), fact.field(), value),
                    house.gridOperator(),
                    house.supply(),
                    house.things()));
        List<Thing> altered = changed(built.things(), fact, value);
        if (altered != built.things())
            return new Site(house, plan, new Built(altered, built.swapped(), built.removed()), evidence);
        List<Thing> planned = changed(plan.things(), fact, value);
        if (planned != plan.things())
            return new Site(house, new Plan(planned, plan.removed(), plan.accepted()), built, evidence);
        List<Thing> found = changed(house.things(), fact, value);
        if (found == house.things()) throw new IllegalArgumentException("no thing has the id " + id);
        return withHouse(new House(house.place(), house.gridOperator(), house.supply(), found));
    }

    /** A copy with a further planned thing. */
    public Site withPlanned(Thing thing) {
        List<Thing> things = new ArrayList<>(plan.things());
        things.add(thing);
        return new Site(house, new Plan(things, plan.removed(), plan.accepted()), built, evidence);
    }

    /** A copy in which these things are taken out. */
    public Site without(Set<ThingId> ids) {
        List<ThingId> removed = new ArrayList<>(plan.removed());
        removed.addAll(ids);
        return new Site(house, new Plan(plan.things(), removed, plan.accepted()), built, evidence);
    }

    private Site withHouse(House changed) {
        return new Site(changed, plan, built, evidence);
    }

    private static List<Thing> changed(List<Thing> things, FactId fact, @Nullable Object value) {
        for (int i = 0; i < things.size(); i++) {
            if (!things.get(i).id().equals(fact.thing())) continue;
            List<Thing> copy = new ArrayList<>(things);
            copy.set(i, Overlay.with(things.get(i), fact.field(), value));
            return copy;
        }
        return things;
    }
}
