package tideover.engine.wiring.procedure;

import java.util.List;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.model.Ids;

/**
 * One step: readings taken at one place.
 *
 * @param index    position in {@link Procedure#steps()}
 * @param name     what it is for
 * @param place    where
 * @param detail   what tells it from others of that name and place; empty for most
 * @param readings positions in {@link Procedure#readings()}
 */
public record Step(int index, StepName name, ThingId place, String detail, List<Integer> readings) {
    public Step {
        readings = List.copyOf(readings);
    }

    /** Lasting name. */
    public String id() {
        return Ids.of(name) + ":" + place + (detail.isEmpty() ? "" : ":" + detail);
    }
}
