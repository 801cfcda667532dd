package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A cable with cores for control or bus, or a bundle of single wires in a cabinet.
 *
 * @param lengthM         one way [m]
 * @param crossSectionMm2 of each core, copper [mm²]
 * @param twistedPairs    whether its cores are twisted in pairs
 * @param screen          where its screen is earthed
 * @param cores           its cores in the order in which they lie
 */
public record ControlCable(
        ThingId id,
        @Nullable String designation,
        @Nullable Double lengthM,
        @Nullable Double crossSectionMm2,
        @Nullable Boolean twistedPairs,
        @Nullable Screen screen,
        @Nullable List<Core> cores)
        implements Thing {
    public ControlCable {
        if (cores != null) cores = List.copyOf(cores);
    }
}
