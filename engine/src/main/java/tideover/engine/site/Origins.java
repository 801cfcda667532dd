package tideover.engine.site;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Looks up where a fact comes from; the narrowest evidence wins. */
public final class Origins {

    private final Map<String, Evidence> byText;
    private final Set<ThingId> found;
    private final Map<ThingId, Thing> stated;

    private Origins(Map<String, Evidence> byText, Set<ThingId> found, Map<ThingId, Thing> stated) {
        this.byText = byText;
        this.found = found;
        this.stated = stated;
    }

    static Origins of(Site site) {
        Map<String, Evidence> byText = new HashMap<>(site.evidence().size() * 2);
        for (Evidence evidence : site.evidence()) byText.put(evidence.about(), evidence);
        Set<ThingId> found = new HashSet<>();
        found.add(ThingId.PLACE);
        found.add(ThingId.GRID_OPERATOR);
        found.add(ThingId.SUPPLY);
        site.house().things().forEach(thing -> found.add(thing.id()));
        Map<ThingId, Thing> stated = new HashMap<>();
        site.plan().things().forEach(thing -> stated.put(thing.id(), thing));
        return new Origins(byText, found, stated);
    }

    /** The evidence for a fact, if anybody has given any. */
    public Optional<Evidence> find(FactId fact) {
        String about = fact.toString();
        Evidence narrow = byText.get(about);
        // From oven.cable.lengthM over oven.cable to oven.
        for (int dot = about.lastIndexOf('.'); narrow == null && dot > 0; dot = about.lastIndexOf('.')) {
            about = about.substring(0, dot);
            narrow = byText.get(about);
        }
        if (narrow == null) narrow = byText.get(isPlanned(fact) ? Evidence.PLAN : Evidence.HOUSE);
        return Optional.ofNullable(narrow);
    }

    /** The origin of a fact; one stated only in the plan is planned, one without evidence is assumed. */
    public Origin of(FactId fact) {
        Evidence evidence = find(fact).orElse(null);
        if (evidence != null) return evidence.origin();
        return isPlanned(fact) ? Origin.PLANNED : Origin.ASSUMED;
    }

    private boolean isPlanned(FactId fact) {
        Thing thing = stated.get(fact.thing());
        if (thing == null) return false;
        return !found.contains(fact.thing()) || Overlay.value(thing, fact.field()) != null;
    }
}
