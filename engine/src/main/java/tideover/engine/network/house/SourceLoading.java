package tideover.engine.network.house;

import org.jspecify.annotations.Nullable;
import tideover.engine.site.PerLine;
import tideover.engine.site.ThingId;

/**
 * What a source would have to give.
 *
 * @param source   which
 * @param currentA on each line, r.m.s. [A]
 * @param powerW   over all lines [W]; negative where it takes up
 * @param powerVa  sum of the apparent powers of its lines [VA]
 * @param limitA   what each line gives continuously [A]; nothing where not known
 * @param limitVa  what it gives continuously over all lines [VA]; nothing where not known
 */
public record SourceLoading(
        ThingId source,
        PerLine currentA,
        double powerW,
        double powerVa,
        @Nullable Double limitA,
        @Nullable Double limitVa) {

    /** Whether it can supply all that; where no limit is known it is taken that it can. */
    public boolean isSupplied() {
        return (limitA == null || currentA.largest() <= limitA) && (limitVa == null || powerVa <= limitVa);
    }
}
