package tideover.engine.protection.shortcircuit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.network.Upstream;
import tideover.engine.protection.FaultCourses;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.ThingId;

/**
 * Whether an overcurrent device breaks what may flow where it stands: alone, or backed up by a fuse before it as its maker
 * allows.
 *
 * @param device      which
 * @param ability     what it can
 * @param prospective what may flow
 * @param backup      the fuse that backs it up; nothing where it needs none or has none
 * @param facts       facts this rests on
 * @param missing     facts without which it is not known
 * @see "IEC 60364-4-43:2008, 434.5.1"
 */
record Breaking(
        Upstream device,
        Ability ability,
        Prospective prospective,
        @Nullable Upstream backup,
        List<FactId> facts,
        List<FactId> missing) {
    Breaking {
        facts = List.copyOf(facts);
        missing = List.copyOf(missing);
    }

    /** What a device can do about the largest current. */
    enum Ability {
        ALONE,
        BACKED_UP,
        TOO_LITTLE,
        UNKNOWN
    }

    static Breaking of(Installation installation, FaultCourses faults, Upstream device) {
        FactId own = device.fact("breakingCapacityA");
        Double capacityA = device.device().breakingCapacityA();
        Prospective prospective =
                Prospective.at(installation, faults, place(installation, device), capacityA == null ? 0 : capacityA);
        List<FactId> facts = new ArrayList<>(prospective.facts());
        List<FactId> missing = new ArrayList<>(prospective.missing());
        facts.add(own);
        if (capacityA == null) missing.add(own);
        if (capacityA == null || !missing.isEmpty())
            return new Breaking(device, Ability.UNKNOWN, prospective, null, facts, missing);
        if (prospective.currentA() <= capacityA)
            return new Breaking(device, Ability.ALONE, prospective, null, facts, missing);
        return backedUp(installation, faults, device, prospective, facts);
    }

    /** Where a device stands: at the outgoing terminals of what feeds its holder. */
    private static ThingId place(Installation installation, Upstream device) {
        ThingId fedFrom =
                installation.findFed(device.holder()).map(Fed::fedFrom).orElse(null);
        return fedFrom == null ? ThingId.SUPPLY : fedFrom;
    }

    private static Breaking backedUp(
            Installation installation,
            FaultCourses faults,
            Upstream device,
            Prospective prospective,
            List<FactId> facts) {
        OvercurrentDevice own = device.device();
        Double largestA = own.largestBackupFuseA();
        Double conditionalA = own.conditionalShortCircuitCurrentA();
        List<FactId> missing = new ArrayList<>(0);
        if (largestA != null && conditionalA != null && prospective.currentA() <= conditionalA) {
            facts.add(device.fact("largestBackupFuseA"));
            facts.add(device.fact("conditionalShortCircuitCurrentA"));
            for (ThingId id : installation.wayFromSupply(place(installation, device))) {
                Upstream before = Upstream.findAt(installation, id).orElse(null);
                if (before == null || before.device().kind() != OvercurrentKind.FUSE) continue;
                Double ratedA = before.device().ratedCurrentA();
                if (ratedA == null || ratedA > largestA) continue;
                Breaking first = of(installation, faults, before);
                if (first.ability == Ability.UNKNOWN) missing.addAll(first.missing);
                if (first.ability != Ability.ALONE) continue;
                facts.add(before.ratedCurrent());
                facts.addAll(first.facts);
                return new Breaking(device, Ability.BACKED_UP, prospective, before, facts, List.of());
            }
        }
        Ability ability = missing.isEmpty() ? Ability.TOO_LITTLE : Ability.UNKNOWN;
        return new Breaking(device, ability, prospective, null, facts, missing);
    }

    /** The device that ends a short circuit: itself, or the fuse that backs it up. */
    OvercurrentDevice ending() {
        return backup == null ? device.device() : backup.device();
    }
}
