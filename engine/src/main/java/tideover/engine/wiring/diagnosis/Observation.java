package tideover.engine.wiring.diagnosis;

import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.procedure.PlannedReading;

/** What somebody has seen. */
public record Observation(PlannedReading reading, Shown shown) {}
