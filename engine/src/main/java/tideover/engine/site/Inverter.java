package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An inverter. {@code fedFrom} is the thing at whose outgoing terminals it is connected; the path is as in {@link Fed}.
 *
 * @param role                  can form the island's voltage, or follows
 * @param ratedPowerVa          rated apparent power, all lines [VA]
 * @param lineCurrentA          continuous current of each line [A]
 * @param overload              overload curve
 * @param faultCurrentA         current into a short-circuit while islanded, r.m.s. per line [A]
 * @param faultTimeS            how long it gives that current [s]
 * @param shutOffTimeS          time from a fault until the source has shut down [s]
 * @param shutOffVoltageV       voltage left then, line to earth [V]
 * @param islandVoltageV        line to neutral in island mode [V]
 * @param islandFrequencyHz     in island mode [Hz]
 * @param feedInPowerW          largest power it feeds, all lines [W]
 * @param largestCoupledPowerW  largest power of generators on the a.c. side of its island its maker allows while it forms [W]
 * @param frequencyResponse     what it does, following, when the frequency rises
 * @param residualType          type of RCD its maker demands in the supply cable
 * @param residualRatedCurrentA largest rated residual current the maker allows there [A]
 */
public record Inverter(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId fedFrom,
        @Nullable ThingId neutralFrom,
        @Nullable List<Conductor> conductors,
        @Nullable Cable cable,
        @Nullable OvercurrentDevice protection,
        @Nullable ResidualDevice rcd,
        @Nullable InverterRole role,
        @Nullable Double ratedPowerVa,
        @Nullable Double lineCurrentA,
        @Nullable List<OverloadPoint> overload,
        @Nullable Double faultCurrentA,
        @Nullable Double faultTimeS,
        @Nullable Double shutOffTimeS,
        @Nullable Double shutOffVoltageV,
        @Nullable Double islandVoltageV,
        @Nullable Double islandFrequencyHz,
        @Nullable Double feedInPowerW,
        @Nullable Double largestCoupledPowerW,
        @Nullable FrequencyResponse frequencyResponse,
        @Nullable RcdType residualType,
        @Nullable Double residualRatedCurrentA)
        implements Fed {
    public Inverter {
        if (conductors != null) conductors = List.copyOf(conductors);
        if (overload != null) overload = List.copyOf(overload);
    }
}
