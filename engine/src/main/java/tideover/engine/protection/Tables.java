package tideover.engine.protection;

import tideover.engine.network.AdiabaticTable;
import tideover.engine.network.AmpacityTable;
import tideover.engine.network.ConductorTable;
import tideover.engine.network.HarmonicTable;
import tideover.engine.network.ProtectiveConductorTable;
import tideover.engine.network.StartTable;

/** The tables of the standards, handed to whatever computes. */
public record Tables(
        ConductorTable conductors,
        AmpacityTable ampacity,
        ProtectiveConductorTable protectiveConductors,
        AdiabaticTable adiabatic,
        TripCurves tripCurves,
        RcdTimes rcdTimes,
        RcdTypes rcdTypes,
        DisconnectionTimes disconnectionTimes,
        LetThroughTable letThrough,
        HarmonicTable harmonics,
        StartTable starts) {}
