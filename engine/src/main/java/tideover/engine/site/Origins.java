package tideover.engine.site;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Looks up where a fact comes from; the narrowest evidence wins. */
public final class Origins {

    private final Map<String, Evidence> byText;
    private final Set<String> particular;
    private final Set<ThingId> found;
    private final Map<ThingId, Thing> stated;

    private Origins(
            Map<String, Evidence> byText, Set<String> particular, Set<ThingId> found, Map<ThingId, Thing> stated) {
        this.byText = byText;
        this.particular = particular;
        this.found = found;
        this.stated = stated;
    }

    static Origins of(Site site) {
        Map<String, Evidence> byText = new HashMap<>(site.evidence().size() * 2);
        Set<String> particular = new HashSet<>();
        for (Evidence evidence : site.evidence()) {
            String about = evidence.about();
            byText.put(about, evidence);
            int dot = about.indexOf('.');
            particular.add(dot < 0 ? about : about.substring(0, dot));
        }
        Set<ThingId> found = new HashSet<>();
        found.add(ThingId.PLACE);
        found.add(ThingId.GRID_OPERATOR);
        found.add(ThingId.SUPPLY);
        for (Thing thing : site.house().things()) found.add(thing.id());
        Map<ThingId, Thing> stated = new HashMap<>();
        for (Thing thing : site.plan().things()) stated.put(thing.id(), thing);
        return new Origins(byText, particular, found, stated);
    }

    /** The evidence for a fact, if anybody has given any. */
    public Optional<Evidence> find(FactId fact) {
        Evidence narrow = findParticular(fact);
        if (narrow == null) narrow = byText.get(isPlanned(fact) ? Evidence.PLAN : Evidence.HOUSE);
        return Optional.ofNullable(narrow);
    }

    /** Evidence about the fact itself or its thing; most things have none, and then no text is put together. */
    private @Nullable Evidence findParticular(FactId fact) {
        if (!particular.contains(fact.thing().text())) return null;
        String about = fact.toString();
        Evidence narrow = byText.get(about);
        // From oven.cable.lengthM over oven.cable to oven.
        for (int dot = about.lastIndexOf('.'); narrow == null && dot > 0; dot = about.lastIndexOf('.')) {
            about = about.substring(0, dot);
            narrow = byText.get(about);
        }
        return narrow;
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
