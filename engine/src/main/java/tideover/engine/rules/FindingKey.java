package tideover.engine.rules;

import java.util.Comparator;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/**
 * What was judged: one check at one place, and the state that decided.
 *
 * @param check id of the check
 * @param place thing it concerns
 * @param state the worst state, or nothing where the state does not matter
 */
public record FindingKey(
        String check, ThingId place, @Nullable OperatingState state) implements Comparable<FindingKey> {

    private static final Comparator<FindingKey> ORDER = Comparator.comparing(FindingKey::check)
            .thenComparing(FindingKey::place)
            .thenComparing(key -> key.state() == null ? -1 : key.state().ordinal());

    @Override
    public int compareTo(FindingKey other) {
        return ORDER.compare(this, other);
    }

    /** {@code check place state}, with {@code -} for no state. */
    @Override
    public String toString() {
        return check + " " + place + " " + (state == null ? "-" : state);
    }
}
