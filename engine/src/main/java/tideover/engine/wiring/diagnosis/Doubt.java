package tideover.engine.wiring.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An observation that stands against all others: where nothing explains what was seen, the one to be taken again first.
 *
 * @param observation what was seen
 * @param isHealthy   whether without it the house would be as planned
 * @param left        single mistakes that would explain the rest
 */
public record Doubt(Observation observation, boolean isHealthy, int left) {

    /** The one without which most is explained; nothing where leaving out any single one explains nothing. */
    public static Optional<Doubt> find(Dictionary dictionary, List<Observation> seen) {
        Doubt best = null;
        for (int i = 0; i < seen.size(); i++) {
            List<Observation> others = new ArrayList<>(seen);
            others.remove(i);
            // Nothing seen explains everything and says nothing.
            if (others.isEmpty()) continue;
            Doubt doubt = new Doubt(
                    seen.get(i),
                    dictionary.isHealthy(others),
                    dictionary.explaining(others).size());
            boolean tells = doubt.isHealthy || doubt.left > 0;
            boolean isBetter = best == null
                    || doubt.isHealthy && !best.isHealthy
                    || doubt.isHealthy == best.isHealthy && doubt.left > best.left;
            if (tells && isBetter) best = doubt;
        }
        return Optional.ofNullable(best);
    }
}
