package tideover.engine.protection;

import java.util.List;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PerLine;
import tideover.engine.site.ThingId;

/**
 * A fault as a story in time: what flows, what opens and when, what is left, what goes dark.
 *
 * @param kind          between which conductors
 * @param extreme       largest or smallest current
 * @param state         operating state
 * @param place         thing at whose own end the fault is
 * @param lines         faulty lines
 * @param source        what feeds it; of several the first
 * @param answer        whether the source gives all that is asked of it
 * @param currentA      through the fault, r.m.s., steady [A]
 * @param sourceA       out of the source, each line, r.m.s. [A]
 * @param loopOhm       voltage before the fault over the current it drives [Ω]; +infinity where nothing flows
 * @param voltageLeftV  smallest voltage left between line and neutral at the source's terminals during the fault [V]
 * @param touchVoltageV exposed parts at the place against remote earth [V]; 0 without a protective conductor
 * @param linkA         largest current in a connection of neutral and earth [A]
 * @param protectiveA   in the protective conductor of the place [A]
 * @param earthA        sum of what flows through the house's electrodes [A]
 * @param bands         devices on the way, from the source on
 * @param clearing      how it ends
 * @param dark          circuits without voltage after that
 * @param missing       facts that might change it
 */
public record FaultCourse(
        FaultKind kind,
        Extreme extreme,
        OperatingState state,
        ThingId place,
        List<Conductor> lines,
        ThingId source,
        SourceAnswer answer,
        double currentA,
        PerLine sourceA,
        double loopOhm,
        double voltageLeftV,
        double touchVoltageV,
        double linkA,
        double protectiveA,
        double earthA,
        List<DeviceBand> bands,
        Clearing clearing,
        List<ThingId> dark,
        List<FactId> missing) {
    public FaultCourse {
        lines = List.copyOf(lines);
        bands = List.copyOf(bands);
        dark = List.copyOf(dark);
        missing = List.copyOf(missing);
    }

    /** What a source does on a fault. */
    public enum SourceAnswer {
        /** It gives what the loop lets flow. */
        IN_FULL,
        /** It gives all it can and its voltage falls. */
        LIMITED
    }
}
