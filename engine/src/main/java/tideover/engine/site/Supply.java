package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * The grid connection point.
 *
 * @param designation           printed name
 * @param earthingSystem        at the connection point
 * @param lines                 one or three
 * @param nominalVoltageV       line to neutral, r.m.s. [V]
 * @param mainFuse              main overcurrent device
 * @param loopImpedanceOhm      line to PE or PEN at the connection point; in TT line to neutral [Ω]
 * @param prospectiveCurrentA   largest prospective short-circuit current there, r.m.s. [A]
 * @param networkElectrodeOhm   earth of the network's neutral, the R_B of TT [Ω]
 * @param penSplitAt            thing at whose outgoing terminals the PEN becomes N and PE (TN-C-S)
 */
public record Supply(
        @Nullable String designation,
        @Nullable EarthingSystem earthingSystem,
        @Nullable SupplyLines lines,
        @Nullable Double nominalVoltageV,
        @Nullable OvercurrentDevice mainFuse,
        @Nullable Double loopImpedanceOhm,
        @Nullable Double prospectiveCurrentA,
        @Nullable Double networkElectrodeOhm,
        @Nullable ThingId penSplitAt)
        implements Thing {
    @Override
    public ThingId id() {
        return ThingId.SUPPLY;
    }
}
