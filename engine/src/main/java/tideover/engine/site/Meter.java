package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A meter in the path of power. The path is as in {@link Fed}.
 *
 * @param role                    the operator's or the inverter system's own
 * @param connection              direct or through transformers
 * @param ratedCurrentA           largest current through a direct meter [A]
 * @param measuringNeutralFrom    thing at whose neutral bar the measuring neutral ends; nothing: not connected
 * @param needsMeasuringNeutral   whether the meter needs one
 * @param measuringNeutralFuseA   fuse in the measuring neutral [A]
 * @param measuringNeutralLimitA  what its terminal bears [A]
 */
public record Meter(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId fedFrom,
        @Nullable ThingId neutralFrom,
        @Nullable List<Conductor> conductors,
        @Nullable Cable cable,
        @Nullable OvercurrentDevice protection,
        @Nullable MeterRole role,
        @Nullable MeterConnection connection,
        @Nullable Double ratedCurrentA,
        @Nullable Boolean needsMeasuringNeutral,
        @Nullable ThingId measuringNeutralFrom,
        @Nullable Double measuringNeutralFuseA,
        @Nullable Double measuringNeutralLimitA)
        implements Fed {
    public Meter {
        if (conductors != null) conductors = List.copyOf(conductors);
    }

    @Override
    public @Nullable ResidualDevice rcd() {
        return null;
    }
}
