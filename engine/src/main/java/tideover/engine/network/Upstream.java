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

        private final String field;
        private final String kind;
        private final String curve;
        private final String ratedCurrentA;

        Slot(String field) {
            this.field = field;
            kind = field + ".kind";
            curve = field + ".curve";
            ratedCurrentA = field + ".ratedCurrentA";
        }
    }

    /** The nearest device before a thing's own terminals: its own, else that of what feeds it, at last the main fuse. */
    public static Optional<Upstream> find(Installation installation, ThingId thing) {
        for (ThingId id : installation.wayFromSupply(thing)) {
            Optional<Upstream> own = findAt(installation, id);
            if (own.isPresent()) return own;
        }
        return Optional.empty();
    }

    /** The devices on a way, from the source on; first the main fuse where the grid is the source. */
    public static List<Upstream> along(Installation installation, Path way) {
        List<Upstream> devices = new ArrayList<>(5);
        if (way.source().equals(ThingId.SUPPLY))
            findAt(installation, ThingId.SUPPLY).ifPresent(devices::add);
        for (Fed fed : way.feeds()) findAt(installation, fed.id()).ifPresent(devices::add);
        return devices;
    }

    /** The device a thing holds itself; the supply holds the main fuse. */
    public static Optional<Upstream> findAt(Installation installation, ThingId holder) {
        if (holder.equals(ThingId.SUPPLY)) {
            OvercurrentDevice main = installation.supply().mainFuse();
            return main == null ? Optional.empty() : Optional.of(new Upstream(holder, Slot.MAIN_FUSE, main));
        }
        OvercurrentDevice own =
                installation.findFed(holder).map(Fed::protection).orElse(null);
        return own == null ? Optional.empty() : Optional.of(new Upstream(holder, Slot.PROTECTION, own));
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

    /** Any fact of the device, by its field. */
    public FactId fact(String part) {
        return new FactId(holder, slot.field + "." + part);
    }

    /** The fact of the device's rated current. */
    public FactId ratedCurrent() {
        return new FactId(holder, slot.ratedCurrentA);
    }
}
