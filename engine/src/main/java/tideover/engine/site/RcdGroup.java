package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** An RCD with its own neutral bar and the circuits behind it. The path is as in {@link Fed}. */
public record RcdGroup(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId fedFrom,
        @Nullable ThingId neutralFrom,
        @Nullable List<Conductor> conductors,
        @Nullable Cable cable,
        @Nullable OvercurrentDevice protection,
        @Nullable ResidualDevice rcd)
        implements Fed {
    public RcdGroup {
        if (conductors != null) conductors = List.copyOf(conductors);
    }
}
