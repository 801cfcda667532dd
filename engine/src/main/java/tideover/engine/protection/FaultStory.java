package tideover.engine.protection;

import java.util.List;
import tideover.engine.site.Conductor;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.FactId;
import tideover.engine.site.ThingId;

/**
 * A fault from a line to the protective conductor at the far end of a thing's cable.
 *
 * @param source    what feeds it
 * @param line      faulty line
 * @param system    earthing system the fault meets in this state: TN where it returns over conductors, TT over earth,
 *                  IT where it has no way back
 * @param voltageV  driving voltage, line to earth [V]
 * @param loopOhm   impedance of the loop [Ω]; +infinity where there is no way back
 * @param electrodeOhm electrodes of the house on the way back [Ω]; 0 in TN
 * @param currentA  smallest fault current, r.m.s. [A]
 * @param clearing  how it ends
 * @param asRead    how it would end without the margin on a measured loop; the same where none was measured
 * @param acting    things whose residual current devices see the fault
 * @param facts     facts this rests on
 * @param missing   facts that might give a quicker end
 */
public record FaultStory(
        ThingId source,
        Conductor line,
        EarthingSystem system,
        double voltageV,
        double loopOhm,
        double electrodeOhm,
        double currentA,
        Clearing clearing,
        Clearing asRead,
        List<ThingId> acting,
        List<FactId> facts,
        List<FactId> missing) {
    public FaultStory {
        acting = List.copyOf(acting);
        facts = List.copyOf(facts);
        missing = List.copyOf(missing);
    }

    /** Whether another story is this one on another line, through the same things. */
    boolean runsLike(FaultStory other) {
        return source.equals(other.source) && facts == other.facts;
    }

    /** The same with current and end as the whole network gives them. */
    FaultStory by(FaultCourse course) {
        return new FaultStory(
                source,
                line,
                system,
                voltageV,
                course.loopOhm(),
                electrodeOhm,
                course.currentA(),
                course.clearing(),
                course.clearing(),
                course.bands().stream()
                        .filter(band -> band.kind() == Clearing.DeviceKind.RESIDUAL_CURRENT)
                        .map(DeviceBand::device)
                        .toList(),
                facts,
                missing);
    }

    /** The same on another line, where that runs through the same things. */
    FaultStory on(Conductor other) {
        return new FaultStory(
                source,
                other,
                system,
                voltageV,
                loopOhm,
                electrodeOhm,
                currentA,
                clearing,
                asRead,
                acting,
                facts,
                missing);
    }
}
