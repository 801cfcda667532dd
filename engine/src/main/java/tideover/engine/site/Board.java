package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A distribution board, or a busbar in one that has its own neutral bar. The path is as in {@link Fed}; the protection
 * sits at the beginning of its feeder.
 *
 * @param busbarRatedCurrentA             rated current of the busbar [A]
 * @param mainSwitchRatedCurrentA         rated current of its main switch [A]
 * @param conditionalShortCircuitCurrentA rated conditional short-circuit current of the assembly, r.m.s. [A]
 * @param surgeProtection                 surge protective device in it
 * @param spareWays                       free places for devices of one module
 * @param room                            where it hangs
 */
public record Board(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId fedFrom,
        @Nullable ThingId neutralFrom,
        @Nullable List<Conductor> conductors,
        @Nullable Cable cable,
        @Nullable OvercurrentDevice protection,
        @Nullable ResidualDevice rcd,
        @Nullable Double busbarRatedCurrentA,
        @Nullable Double mainSwitchRatedCurrentA,
        @Nullable Double conditionalShortCircuitCurrentA,
        @Nullable SurgeProtection surgeProtection,
        @Nullable Integer spareWays,
        @Nullable String room)
        implements Fed {
    public Board {
        if (conductors != null) conductors = List.copyOf(conductors);
    }
}
