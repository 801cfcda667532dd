package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The switching device for islanding (IEC 63552). Its incoming terminals are the grid side, its outgoing ones the
 * island side. The path is as in {@link Fed}.
 *
 * @param kind                             contactor or motor switch
 * @param poles                            poles it separates: the lines first, one more is the neutral
 * @param ratedCurrentA                    rated current of each pole [A]
 * @param largestBackupFuseA               largest back-up fuse its maker allows [A]
 * @param conditionalShortCircuitCurrentA  with that back-up fuse, r.m.s. [A]
 * @param feedbackContact                  what reports the position of the main contacts
 * @param restPosition                     where it rests when its control supply is lost
 * @param builtInto                        inverter whose own changeover relay this is; nothing: a device of its own
 * @param terminals                        terminal names of the maker, grid side then island side
 */
public record IslandingSwitch(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId fedFrom,
        @Nullable ThingId neutralFrom,
        @Nullable List<Conductor> conductors,
        @Nullable Cable cable,
        @Nullable OvercurrentDevice protection,
        @Nullable SwitchKind kind,
        @Nullable Integer poles,
        @Nullable Double ratedCurrentA,
        @Nullable Double largestBackupFuseA,
        @Nullable Double conditionalShortCircuitCurrentA,
        @Nullable FeedbackContact feedbackContact,
        @Nullable RestPosition restPosition,
        @Nullable ThingId builtInto,
        @Nullable List<String> terminals)
        implements Fed {
    public IslandingSwitch {
        if (conductors != null) conductors = List.copyOf(conductors);
        if (terminals != null) terminals = List.copyOf(terminals);
    }

    @Override
    public @Nullable ResidualDevice rcd() {
        return null;
    }
}
