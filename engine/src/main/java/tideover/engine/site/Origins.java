package tideover.engine.site;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Looks up where a fact comes from; the narrowest evidence wins. For one thread: it remembers what it was asked. */
public final class Origins {

    /** Stands for the whole thing among the fields it has evidence for. */
    private static final String WHOLE = "";

    private final Map<String, Map<String, Evidence>> byThingAndField;
    private final Set<ThingId> found;
    private final Map<ThingId, Thing> stated;
    /** What was asked before: the same facts lie under many findings. */
    private final Map<FactId, Origin> asked = new HashMap<>();

    private Origins(
            Map<String, Map<String, Evidence>> byThingAndField, Set<ThingId> found, Map<ThingId, Thing> stated) {
        this.byThingAndField = byThingAndField;
        this.found = found;
        this.stated = stated;
    }

    static Origins of(Site site) {
        Map<String, Map<String, Evidence>> byThingAndField = new HashMap<>();
        for (Evidence evidence : site.evidence()) {
            String about = evidence.about();
            int dot = about.indexOf('.');
            byThingAndField
                    .computeIfAbsent(dot < 0 ? about : about.substring(0, dot), thing -> new HashMap<>())
                    .put(dot < 0 ? WHOLE : about.substring(dot + 1), evidence);
        }
        Set<ThingId> found = new HashSet<>();
        found.add(ThingId.PLACE);
        found.add(ThingId.GRID_OPERATOR);
        found.add(ThingId.SUPPLY);
        for (Thing thing : site.house().things()) found.add(thing.id());
        Map<ThingId, Thing> stated = new HashMap<>();
        for (Thing thing : site.plan().things()) stated.put(thing.id(), thing);
        return new Origins(byThingAndField, found, stated);
    }

    /** The evidence for a fact, if anybody has given any. */
    public Optional<Evidence> find(FactId fact) {
        Evidence narrow = findParticular(fact.thing().text(), fact.field());
        if (narrow == null) narrow = findParticular(isPlanned(fact) ? Evidence.PLAN : Evidence.HOUSE, WHOLE);
        return Optional.ofNullable(narrow);
    }

    /** Evidence about the fact itself, or about the group of facts or the thing it belongs to. */
    private @Nullable Evidence findParticular(String thing, String field) {
        Map<String, Evidence> byField = byThingAndField.get(thing);
        if (byField == null) return null;
        Evidence narrow = byField.get(field);
        // From cable.lengthM over cable to the whole thing.
        for (int dot = field.lastIndexOf('.'); narrow == null && dot > 0; dot = field.lastIndexOf('.', dot - 1))
            narrow = byField.get(field.substring(0, dot));
        return narrow == null ? byField.get(WHOLE) : narrow;
    }

    /** The origin of a fact; one stated only in the plan is planned, one without evidence is assumed. */
    public Origin of(FactId fact) {
        Origin known = asked.get(fact);
        if (known != null) return known;
        Origin origin = find(fact).map(Evidence::origin).orElse(isPlanned(fact) ? Origin.PLANNED : Origin.ASSUMED);
        asked.put(fact, origin);
        return origin;
    }

    private boolean isPlanned(FactId fact) {
        Thing thing = stated.get(fact.thing());
        if (thing == null) return false;
        return !found.contains(fact.thing()) || Overlay.value(thing, fact.field()) != null;
    }
}
