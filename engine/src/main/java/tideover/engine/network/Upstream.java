package tideover.engine.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.installation.Path;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.ThingId;

/**
 * The nearest overcurrent device on the way of a thing from the supply.
 *
 * @param holder thing that holds it; the supply for the main fuse
 * @param slot   where in the holder it stands
 * @param device the device
 */
public record Upstream(ThingId holder, Slot slot, OvercurrentDevice device) {

    /** The field of a thing in which an overcurrent device stands. */
    public enum Slot {
        MAIN_FUSE("mainFuse"),
        PROTECTION("protection");

        private final String kind;
        private final String curve;
        private final String ratedCurrentA;

        Slot(String field) {
            kind = field + ".kind";
            curve = field + ".curve";
            ratedCurrentA = field + ".ratedCurrentA";
        }
    }

    /** The nearest device before a thing's own terminals: its own, else that of what feeds it, at last the main fuse. */
    public static Optional<Upstream> find(Installation installation, ThingId thing) {
        for (ThingId id : installation.wayFromSupply(thing)) {
            if (id.equals(ThingId.SUPPLY)) {
                OvercurrentDevice main = installation.supply().mainFuse();
                return main == null ? Optional.empty() : Optional.of(new Upstream(id, Slot.MAIN_FUSE, main));
            }
            OvercurrentDevice own =
                    installation.findFed(id).map(Fed::protection).orElse(null);
            if (own != null) return Optional.of(new Upstream(id, Slot.PROTECTION, own));
        }
        return Optional.empty();
    }

    /** The devices on a way, from the source on; first the main fuse where the grid is the source. */
    public static List<Upstream> along(Installation installation, Path way) {
        List<Upstream> devices = new ArrayList<>(5);
        OvercurrentDevice main = installation.supply().mainFuse();
        if (way.source().equals(ThingId.SUPPLY) && main != null)
            devices.add(new Upstream(ThingId.SUPPLY, Slot.MAIN_FUSE, main));
        for (Fed fed : way.feeds())
            if (fed.protection() != null) devices.add(new Upstream(fed.id(), Slot.PROTECTION, fed.protection()));
        return devices;
    }

    /** What is known of the device: kind, curve of a breaker, rated current. */
    public List<FactId> facts() {
        FactId kind = new FactId(holder, slot.kind);
        return device.curve() == null ? List.of(kind, ratedCurrent()) : List.of(kind, curve(), ratedCurrent());
    }

    /** Facts without which its time–current curve is not known; where all are known the one that no table reaches. */
    public List<FactId> missingForCurve() {
        List<FactId> missing = new ArrayList<>(3);
        if (device.kind() == null) missing.add(new FactId(holder, slot.kind));
        if (device.ratedCurrentA() == null) missing.add(ratedCurrent());
        if (device.curve() == null && device.kind() != OvercurrentKind.FUSE) missing.add(curve());
        return missing.isEmpty() ? List.of(ratedCurrent()) : missing;
    }

    /** The fact of the device's curve. */
    public FactId curve() {
        return new FactId(holder, slot.curve);
    }

    /** The fact of the device's rated current. */
    public FactId ratedCurrent() {
        return new FactId(holder, slot.ratedCurrentA);
    }
}
