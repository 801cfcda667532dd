package tideover.engine.site;

import java.util.List;

/**
 * What becomes of the house.
 *
 * @param things   a thing with an id of the house alters it: facts stated here replace those found, the others stay; any
 *                 other thing is new
 * @param removed  things taken out
 * @param accepted advice the planner does not follow
 */
public record Plan(List<Thing> things, List<ThingId> removed, List<AcceptedAdvice> accepted) {
    /** Nothing changes. */
    public static final Plan NONE = new Plan(List.of(), List.of(), List.of());

    public Plan {
        things = List.copyOf(things);
        removed = List.copyOf(removed);
        accepted = List.copyOf(accepted);
    }
}
