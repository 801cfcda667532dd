package tideover.engine.wiring.schedule;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.site.Fed;
import tideover.engine.site.Meter;
import tideover.engine.site.Site;
import tideover.engine.site.Status;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** What of the power wiring the job touches. */
final class Touched {

    /** Facts that say how a thing is wired. Whoever alters one of them works at its terminals. */
    private static final List<String> OF_THE_WIRING = List.of(
            "fedFrom",
            "neutralFrom",
            "conductors",
            "cable",
            "protection",
            "rcd",
            "poles",
            "neutralAt",
            "earthAt",
            "leadsTo");

    private static final List<String> OF_THE_MEASURING = List.of("measuringNeutralFrom", "measuringNeutralFuseA");
    private static final List<String> OF_THE_CABLE = List.of("cable.lengthM", "cable.crossSectionMm2");

    private final Installation installation;
    private final Map<Class<?>, Set<String>> partsOf = new HashMap<>();
    private final Set<ThingId> rewired = new HashSet<>();
    private final Set<ThingId> recabled = new HashSet<>();
    private final Set<ThingId> remeasured = new HashSet<>();

    Touched(Installation installation) {
        this.installation = installation;
        Site site = installation.site();
        Stream.concat(site.plan().things().stream(), site.built().things().stream())
                .forEach(thing -> {
                    if (states(thing, OF_THE_WIRING)) rewired.add(thing.id());
                    if (states(thing, OF_THE_CABLE)) recabled.add(thing.id());
                    if (states(thing, OF_THE_MEASURING)) remeasured.add(thing.id());
                });
    }

    private boolean states(Thing thing, List<String> fields) {
        Set<String> parts = partsOf.computeIfAbsent(
                thing.getClass(),
                kind -> Arrays.stream(kind.getRecordComponents())
                        .map(RecordComponent::getName)
                        .collect(Collectors.toSet()));
        for (String field : fields) {
            String first = field.contains(".") ? field.substring(0, field.indexOf('.')) : field;
            if (parts.contains(first) && thing.value(field) != null) return true;
        }
        return false;
    }

    /** Whether a thing's own conductors are connected in this job. */
    boolean touches(Thing thing) {
        Status status = installation.status(thing.id());
        if (status == Status.NEW) return true;
        if (status == Status.ALTERED && rewired.contains(thing.id())) return true;
        // A device put in the place of another: what begins at its terminals comes off and goes on again.
        return thing instanceof Fed fed && (isNew(fed.fedFrom()) || isNew(fed.neutralFrom()));
    }

    /** Whether a meter's measuring neutral is laid in this job. */
    boolean touchesMeasuring(Meter meter) {
        return installation.status(meter.id()) == Status.NEW || remeasured.contains(meter.id());
    }

    private boolean isNew(@Nullable ThingId thing) {
        return thing != null && installation.status(thing) == Status.NEW;
    }

    /** Whether the supply cable of a thing is laid in this job. */
    boolean isCableNew(Fed fed) {
        boolean addedBySomebody = installation.status(fed.id()) == Status.NEW
                && installation.site().built().swapped().stream().noneMatch(fed.id()::equals);
        return fed.cable() != null && (addedBySomebody || recabled.contains(fed.id()));
    }
}
