package tideover.engine.site;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Looks up where a fact comes from; the narrowest evidence wins. For one thread: it remembers what it was asked. */
public final class Origins {

    private final Map<ThingId, Known> things;
    private final @Nullable Evidence house;
    private final @Nullable Evidence plan;
    private final @Nullable Evidence built;

    private Origins(
            Map<ThingId, Known> things, @Nullable Evidence house, @Nullable Evidence plan, @Nullable Evidence built) {
        this.things = things;
        this.house = house;
        this.plan = plan;
        this.built = built;
    }

    /** What is said of one thing: where it is stated, and evidence for all of it and for some of its facts. */
    private static final class Known {
        private boolean isFound;
        private @Nullable Thing planned;
        private @Nullable Thing built;
        private @Nullable Evidence whole;
        private @Nullable Map<String, Evidence> byField;
        /** Asked before: the same facts lie under many findings. */
        private final Map<String, Origin> asked = new HashMap<>(4);

        /** A fact is planned if it is stated in the plan, and any fact of a thing that only the plan knows. */
        private boolean isPlanned(String field) {
            return planned != null && (!isFound || Overlay.value(planned, field) != null);
        }

        /** A fact is one of the house as built if it is stated there, and any fact of a thing that was only added there. */
        private boolean isBuilt(String field) {
            return built != null && (!isFound && planned == null || Overlay.value(built, field) != null);
        }

        /** Evidence about the fact itself, or about the group of facts or the thing it belongs to. */
        private @Nullable Evidence find(String field) {
            if (byField == null) return whole;
            Evidence narrow = byField.get(field);
            // From cable.lengthM over cable to the whole thing.
            for (int dot = field.lastIndexOf('.'); narrow == null && dot > 0; dot = field.lastIndexOf('.', dot - 1))
                narrow = byField.get(field.substring(0, dot));
            return narrow == null ? whole : narrow;
        }

        private void add(Evidence evidence, int dot) {
            if (dot < 0) {
                whole = evidence;
            } else {
                if (byField == null) byField = new HashMap<>();
                byField.put(evidence.about().substring(dot + 1), evidence);
            }
        }
    }

    static Origins of(Site site) {
        Map<ThingId, Known> things = new HashMap<>(256);
        for (ThingId always : new ThingId[] {ThingId.PLACE, ThingId.GRID_OPERATOR, ThingId.SUPPLY})
            known(things, always).isFound = true;
        for (Thing thing : site.house().things()) known(things, thing.id()).isFound = true;
        for (Thing thing : site.plan().things()) known(things, thing.id()).planned = thing;
        for (Thing thing : site.built().things()) known(things, thing.id()).built = thing;
        Evidence house = null;
        Evidence plan = null;
        Evidence built = null;
        for (Evidence evidence : site.evidence()) {
            String about = evidence.about();
            int dot = about.indexOf('.');
            if (about.equals(Evidence.HOUSE)) house = evidence;
            else if (about.equals(Evidence.PLAN)) plan = evidence;
            else if (about.equals(Evidence.BUILT)) built = evidence;
            else
                known(things, new ThingId(dot < 0 ? about : about.substring(0, dot)))
                        .add(evidence, dot);
        }
        return new Origins(things, house, plan, built);
    }

    private static Known known(Map<ThingId, Known> things, ThingId id) {
        return things.computeIfAbsent(id, i -> new Known());
    }

    /** The evidence for a fact, if anybody has given any. */
    public Optional<Evidence> find(FactId fact) {
        return Optional.ofNullable(evidence(things.get(fact.thing()), fact.field()));
    }

    private @Nullable Evidence evidence(@Nullable Known known, String field) {
        if (known == null) return house;
        Evidence narrow = known.find(field);
        if (narrow != null) return narrow;
        if (built != null && known.isBuilt(field)) return built;
        return known.isPlanned(field) || known.isBuilt(field) ? plan : house;
    }

    /** The origin of a fact; one stated only in the plan is planned, one without evidence is assumed. */
    public Origin of(FactId fact) {
        Known known = things.get(fact.thing());
        if (known == null) return house == null ? Origin.ASSUMED : house.origin();
        Origin origin = known.asked.get(fact.field());
        if (origin == null) {
            origin = origin(known, fact.field());
            known.asked.put(fact.field(), origin);
        }
        return origin;
    }

    private Origin origin(Known known, String field) {
        Evidence evidence = evidence(known, field);
        if (evidence != null) return evidence.origin();
        return known.isPlanned(field) || known.isBuilt(field) ? Origin.PLANNED : Origin.ASSUMED;
    }
}
