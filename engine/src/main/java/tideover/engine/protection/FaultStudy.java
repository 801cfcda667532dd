package tideover.engine.protection;

import java.util.List;
import tideover.engine.rules.Trace;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;

/** What happens on a fault; computes and never judges. */
public interface FaultStudy {

    /**
     * A bolted fault from line to PE or PEN at the far end of a thing's cable, one story for each line that is live.
     *
     * @return empty where the thing has no voltage in this state
     */
    List<FaultStory> lineToEarth(Fed thing, OperatingState state);

    /** Takes down how {@link #lineToEarth} came to one of its stories. */
    void explain(FaultStory story, Fed thing, OperatingState state, Trace trace);
}
