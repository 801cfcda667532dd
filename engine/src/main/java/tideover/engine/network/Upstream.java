package tideover.engine.network;

import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.ThingId;

/**
 * The nearest overcurrent device on the way of a thing from the supply.
 *
 * @param holder thing that holds it; the supply for the main fuse
 * @param field  field of the holder in which it stands
 * @param device the device
 */
public record Upstream(ThingId holder, String field, OvercurrentDevice device) {

    /** The nearest device before a thing's own terminals: its own, else that of what feeds it, at last the main fuse. */
    public static Optional<Upstream> find(Installation installation, ThingId thing) {
        for (ThingId id : installation.wayFromSupply(thing)) {
            if (id.equals(ThingId.SUPPLY)) {
                OvercurrentDevice main = installation.supply().mainFuse();
                return main == null ? Optional.empty() : Optional.of(new Upstream(id, "mainFuse", main));
            }
            OvercurrentDevice own =
                    installation.findFed(id).map(Fed::protection).orElse(null);
            if (own != null) return Optional.of(new Upstream(id, "protection", own));
        }
        return Optional.empty();
    }

    /** What is known of the device: kind, curve of a breaker, rated current. */
    public List<FactId> facts() {
        FactId kind = new FactId(holder, field + ".kind");
        if (device.curve() == null) return List.of(kind, ratedCurrent());
        return List.of(kind, new FactId(holder, field + ".curve"), ratedCurrent());
    }

    /** The fact of the device's rated current. */
    public FactId ratedCurrent() {
        return new FactId(holder, field + ".ratedCurrentA");
    }
}
