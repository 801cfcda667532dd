package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A final circuit. Whether it stays on follows from where it is connected. The path is as in {@link Fed}.
 *
 * @param load                what it feeds
 * @param sharedNeutralWith   circuits that return over the same neutral conductor
 * @param importance          what the customer says of it
 * @param stayOn              must, may or never stay on
 * @param loopImpedanceOhm    measured at its far end, line to PE, connected mode [Ω]
 * @param year                of installation
 * @param edition             rules it was installed to
 */
public record Circuit(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId fedFrom,
        @Nullable ThingId neutralFrom,
        @Nullable List<Conductor> conductors,
        @Nullable Cable cable,
        @Nullable OvercurrentDevice protection,
        @Nullable ResidualDevice rcd,
        @Nullable Load load,
        @Nullable List<ThingId> sharedNeutralWith,
        @Nullable Importance importance,
        @Nullable StayOn stayOn,
        @Nullable Double loopImpedanceOhm,
        @Nullable Integer year,
        @Nullable String edition)
        implements Fed {
    public Circuit {
        if (conductors != null) conductors = List.copyOf(conductors);
        if (sharedNeutralWith != null) sharedNeutralWith = List.copyOf(sharedNeutralWith);
    }
}
