package tideover.engine.protection;

import java.util.List;
import java.util.OptionalDouble;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/** Faults of every kind anywhere in the house, told as stories; computes and never judges. */
public interface FaultCourses extends FaultStudy {

    /**
     * Faults at a thing's own end, told as stories: one for each line, pair of lines or set of three that is live there.
     *
     * @param faultOhm resistance of the fault, 0 where bolted [Ω]
     * @return empty where the thing lacks the conductors or has no voltage in this state
     */
    List<FaultCourse> courses(FaultKind kind, Fed place, OperatingState state, Extreme extreme, double faultOhm);

    /**
     * Largest fault current of any kind at a thing's own end, what inverters add included.
     *
     * @return current [A]; nothing where it has no voltage, or the grid's prospective current is not known
     */
    OptionalDouble findLargestA(ThingId place, OperatingState state);
}
