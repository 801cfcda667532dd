package tideover.engine.wiring.mistake;

import java.util.List;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.model.Defect;
import tideover.engine.wiring.model.Ids;

/**
 * One mistake or failure.
 *
 * @param index   position in {@link Mistakes#of}
 * @param kind    what was done
 * @param place   thing, cable or port it was done at
 * @param details conductors, core marks or terminals, in the words printed on them
 * @param other   another thing that has part in it; the place itself where there is none
 * @param defect  what it changes in the model
 */
public record Mistake(int index, MistakeKind kind, ThingId place, List<String> details, ThingId other, Defect defect) {
    public Mistake {
        details = List.copyOf(details);
    }

    /** Lasting name, such as {@code exchanged:oven:L1:N}. */
    public String id() {
        StringBuilder id = new StringBuilder(Ids.of(kind)).append(':').append(place);
        for (String detail : details) id.append(':').append(detail.replace(' ', '-'));
        if (!other.equals(place)) id.append(':').append(other);
        return id.toString();
    }
}
