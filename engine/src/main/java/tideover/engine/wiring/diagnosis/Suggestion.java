package tideover.engine.wiring.diagnosis;

import java.util.Map;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.procedure.PlannedReading;

/**
 * A reading worth taking next.
 *
 * @param reading      what to read
 * @param left         how many explanations each value would leave
 * @param expectedLeft how many are left on average, each explanation as likely as another
 */
public record Suggestion(PlannedReading reading, Map<Shown, Integer> left, double expectedLeft) {
    public Suggestion {
        left = Map.copyOf(left);
    }
}
