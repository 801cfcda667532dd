package tideover.engine.wiring.schedule;

import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.site.ByPass;
import tideover.engine.site.Cable;
import tideover.engine.site.Fed;
import tideover.engine.site.Meter;
import tideover.engine.site.NeutralEarthLink;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.Site;
import tideover.engine.site.Status;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** What of the power wiring the job touches. */
final class Touched {

    private final Installation installation;
    private final Set<ThingId> rewired = new HashSet<>();
    private final Set<ThingId> recabled = new HashSet<>();
    private final Set<ThingId> remeasured = new HashSet<>();

    Touched(Installation installation) {
        this.installation = installation;
        Site site = installation.site();
        Stream.concat(site.plan().things().stream(), site.built().things().stream())
                .forEach(stated -> {
                    if (statesWiring(stated)) rewired.add(stated.id());
                    if (stated instanceof Fed fed && statesCable(fed.cable())) recabled.add(stated.id());
                    if (stated instanceof Meter meter && statesMeasuring(meter)) remeasured.add(stated.id());
                });
    }

    /** Whether anything is stated of how a thing is connected: whoever alters that works at its terminals. */
    private static boolean statesWiring(Thing stated) {
        if (stated instanceof Fed fed)
            return anyStated(
                    fed.fedFrom(), fed.neutralFrom(), fed.conductors(), fed.cable(), fed.protection(), fed.rcd());
        if (stated instanceof ByPass byPass) return anyStated(byPass.fedFrom(), byPass.leadsTo(), byPass.poles());
        if (stated instanceof NeutralEarthSwitch link) return anyStated(link.neutralAt(), link.earthAt());
        return stated instanceof NeutralEarthLink link && anyStated(link.neutralAt(), link.earthAt());
    }

    /** Another length or section is another cable. */
    private static boolean statesCable(@Nullable Cable cable) {
        return cable != null && anyStated(cable.lengthM(), cable.crossSectionMm2());
    }

    private static boolean statesMeasuring(Meter meter) {
        return anyStated(meter.measuringNeutralFrom(), meter.measuringNeutralFuseA());
    }

    private static boolean anyStated(@Nullable Object... facts) {
        return Stream.of(facts).anyMatch(Objects::nonNull);
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
        boolean isAdded = installation.status(fed.id()) == Status.NEW
                && !installation.site().built().swapped().contains(fed.id());
        return fed.cable() != null && (isAdded || recabled.contains(fed.id()));
    }
}
