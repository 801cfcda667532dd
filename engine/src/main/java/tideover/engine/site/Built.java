package tideover.engine.site;

import java.util.List;

/**
 * What was built, where it is not as planned.
 *
 * @param things  facts stated here replace the planned ones; things with a new id were added
 * @param swapped devices delivered instead of the planned ones: of the planned device only its place counts on
 * @param removed things left out
 */
public record Built(List<Thing> things, List<ThingId> swapped, List<ThingId> removed) {
    /** Built as planned, or not built yet. */
    public static final Built AS_PLANNED = new Built(List.of(), List.of(), List.of());

    public Built {
        things = List.copyOf(things);
        swapped = List.copyOf(swapped);
        removed = List.copyOf(removed);
    }

    /** Whether nothing differs from the plan. */
    public boolean isAsPlanned() {
        return things.isEmpty() && swapped.isEmpty() && removed.isEmpty();
    }
}
