package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The maker's names and demands for one set of power terminals.
 *
 * @param at                  thing in the path of power they belong to
 * @param side                which set
 * @param names               in the order of the thing's conductors
 * @param secondNeutral       a second neutral terminal, where there is one
 * @param torqueNm            tightening torque [Nm]
 * @param strippedLengthM     length to strip [m]
 * @param largestCrossSectionMm2 largest conductor that fits [mm²]
 */
public record PowerTerminals(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId at,
        @Nullable Terminals side,
        @Nullable List<String> names,
        @Nullable String secondNeutral,
        @Nullable Double torqueNm,
        @Nullable Double strippedLengthM,
        @Nullable Double largestCrossSectionMm2)
        implements Thing {
    public PowerTerminals {
        if (names != null) names = List.copyOf(names);
    }
}
