package tideover.engine.rules;

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

    /** By check, then place, then state. */
    @Override
    public int compareTo(FindingKey other) {
        int byCheck = check.equals(other.check) ? 0 : check.compareTo(other.check);
        if (byCheck != 0) return byCheck;
        int byPlace = place.compareTo(other.place);
        return byPlace != 0 ? byPlace : Integer.compare(rank(state), rank(other.state));
    }

    private static int rank(@Nullable OperatingState state) {
        return state == null ? -1 : state.ordinal();
    }

    /** {@code check place state}, with {@code -} for no state. */
    @Override
    public String toString() {
        return check + " " + place + " " + (state == null ? "-" : state);
    }
}
