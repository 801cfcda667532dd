package tideover.engine.wiring.diagnosis;

import java.util.Map;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.procedure.PlannedReading;

/**
 * A reading worth taking next.
 *
 * @param reading what to read
 * @param left    how many explanations each value would leave
 */
public record Suggestion(PlannedReading reading, Map<Shown, Integer> left) {
    public Suggestion {
        left = Map.copyOf(left);
    }

    /** How many explanations are left on average, each as likely as another. */
    public double expectedLeft() {
        double squares = 0;
        int all = 0;
        for (int count : left.values()) {
            squares += (double) count * count;
            all += count;
        }
        return all == 0 ? 0 : squares / all;
    }
}
