package tideover.files.first;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Origin;
import tideover.engine.site.SupplyLines;

/**
 * What was said at the first visit.
 *
 * @param designation  what the site is called
 * @param country      two letters, which choose the rule book; empty where nobody said
 * @param origin       who says so
 * @param earthing     of the supply; nothing where nobody knows
 * @param lines        of the supply; nothing where nobody knows
 * @param mainFuseA    rated current of the main fuse [A]; nothing where nobody knows
 * @param loads        ids of the typical loads there are
 * @param staysOn      ids of those that must stay on
 * @param peakPowerW   of the PV modules [W]; nothing where there are none
 * @param usableEnergyWh of the battery [Wh]; nothing where it is not chosen yet
 * @param ratedPowerVa of the inverter [VA]; nothing where it is not chosen yet
 * @param source       whether inverter and battery are there already
 * @param forms        how many lines the inverter forms
 */
public record FirstAnswers(
        String designation,
        String country,
        Origin origin,
        @Nullable EarthingSystem earthing,
        @Nullable SupplyLines lines,
        @Nullable Double mainFuseA,
        List<String> loads,
        List<String> staysOn,
        @Nullable Double peakPowerW,
        @Nullable Double usableEnergyWh,
        @Nullable Double ratedPowerVa,
        SourceIs source,
        SupplyLines forms) {
    public FirstAnswers {
        loads = List.copyOf(loads);
        staysOn = List.copyOf(staysOn);
    }

    /** Whether what feeds the island is there already. */
    public enum SourceIs {
        THERE,
        TO_BE_PLANNED
    }
}
