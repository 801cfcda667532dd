package tideover.files;

import org.jspecify.annotations.Nullable;
import tideover.engine.site.ThingId;
import tideover.files.yaml.Spot;

/**
 * One place where a thing names another.
 *
 * @param side   where it is stated
 * @param owner  thing that names; nothing where a list of the plan does
 * @param path   field inside the owner
 * @param where  how messages call the place
 * @param field  its row
 * @param target what is named
 * @param spot   where it stands
 */
record Reference(
        Side side, @Nullable ThingId owner, String path, String where, Field field, ThingId target, Spot spot) {
    /** Where in a site something is stated. */
    enum Side {
        /** As found. */
        HOUSE,
        PLAN
    }
}
