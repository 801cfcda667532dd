package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** An overcurrent device that stands by itself in the path, such as a back-up fuse. The path is as in {@link Fed}. */
public record ProtectiveDevice(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId fedFrom,
        @Nullable ThingId neutralFrom,
        @Nullable List<Conductor> conductors,
        @Nullable Cable cable,
        @Nullable OvercurrentDevice protection)
        implements Fed {
    public ProtectiveDevice {
        if (conductors != null) conductors = List.copyOf(conductors);
    }

    @Override
    public @Nullable ResidualDevice rcd() {
        return null;
    }
}
