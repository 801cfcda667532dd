package tideover.engine.installation.control;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.ControlCable;
import tideover.engine.site.ControlPort;
import tideover.engine.site.FactId;
import tideover.engine.site.ThingId;

/**
 * Direct currents in the control wiring while everything that can be on draws its rated current at once, which is never
 * less than what really flows.
 */
final class ControlLoads {

    private final Collection<Drive> drives;
    private final List<List<Drive>> overWire = new ArrayList<>();

    ControlLoads(Collection<Drive> drives, int wireCount) {
        this.drives = drives;
        for (int i = 0; i < wireCount; i++) overWire.add(new ArrayList<>(2));
        for (Drive drive : drives)
            for (Wire wire : drive.wires()) overWire.get(wire.index()).add(drive);
    }

    /** Everything that draws from a supply. */
    List<Drive> from(ControlPort supply) {
        return drives.stream()
                .filter(drive -> drive.supply().id().equals(supply.id()))
                .toList();
    }

    /** Everything the current of which takes a contact. */
    List<Drive> through(ThingId contact) {
        return drives.stream()
                .filter(drive ->
                        drive.contacts().stream().anyMatch(port -> port.id().equals(contact)))
                .toList();
    }

    /** Sum of the rated currents [A]; those not stated are left out, {@link #missingCurrents} names them. */
    static double sumA(List<Drive> drives) {
        double sumA = 0;
        for (Drive drive : drives) {
            Double currentA = drive.port().currentA();
            if (currentA != null) sumA += currentA;
        }
        return sumA;
    }

    /** Rated currents nobody has stated. */
    static List<FactId> missingCurrents(List<Drive> drives) {
        return drives.stream()
                .filter(drive -> drive.port().currentA() == null)
                .map(drive -> drive.port().fact("currentA"))
                .toList();
    }

    /**
     * What is lost on the way to a coil or input and back.
     *
     * @param dropV    voltage drop [V]
     * @param wayM     length of all cores on the way [m]
     * @param facts    facts it rests on
     * @param missing  those of them nobody has stated, without which the drop is not known
     */
    record Loss(double dropV, double wayM, List<FactId> facts, List<FactId> missing) {}

    /**
     * What is lost on the way to a coil or input and back: the sum of R·I over its cores.
     *
     * @param copperOhmPerKm resistance of a core of 1 mm² [Ω/km]
     */
    Loss loss(Drive drive, double copperOhmPerKm) {
        Set<FactId> missing = new LinkedHashSet<>(0);
        Set<FactId> facts = new LinkedHashSet<>();
        double dropV = 0;
        double wayM = 0;
        for (Wire wire : drive.wires()) {
            ControlCable cable = wire.cable();
            List<Drive> sharing = overWire.get(wire.index());
            missing.addAll(missingCurrents(sharing));
            for (Drive each : sharing) facts.add(each.port().fact("currentA"));
            facts.add(cable.fact("lengthM"));
            facts.add(cable.fact("crossSectionMm2"));
            Double lengthM = required(cable.lengthM(), cable.fact("lengthM"), missing);
            Double sectionMm2 = required(cable.crossSectionMm2(), cable.fact("crossSectionMm2"), missing);
            if (lengthM == null || sectionMm2 == null) continue;
            dropV += copperOhmPerKm / sectionMm2 * lengthM / 1000 * sumA(sharing);
            wayM += lengthM;
        }
        return new Loss(dropV, wayM, List.copyOf(facts), List.copyOf(missing));
    }

    private static @Nullable Double required(@Nullable Double value, FactId fact, Set<FactId> missing) {
        if (value == null) missing.add(fact);
        return value;
    }
}
