package tideover.files;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.ThingId;
import tideover.files.yaml.Spot;

/**
 * One place where a thing names another.
 *
 * @param side   where it is stated
 * @param owner  thing that names; nothing where a list of the plan does
 * @param path   field inside the owner; {@code cores[2].from} inside a list of groups
 * @param where  how messages call the place
 * @param field  its row
 * @param target what is named
 * @param name   which terminal of it; nothing where the thing itself is meant
 * @param spot   where it stands
 */
record Reference(
        Side side,
        @Nullable ThingId owner,
        String path,
        String where,
        Field field,
        ThingId target,
        @Nullable String name,
        Spot spot) {
    /** Where in a site something is stated. */
    enum Side {
        /** As found. */
        HOUSE,
        PLAN,
        /** Otherwise than planned. */
        BUILT;

        /** The sides from the house to this one. */
        List<Side> andBefore() {
            return Arrays.asList(values()).subList(0, ordinal() + 1);
        }
    }

    /** The field of the owner itself. */
    String topField() {
        int end = 0;
        while (end < path.length() && path.charAt(end) != '.' && path.charAt(end) != '[') end++;
        return path.substring(0, end);
    }
}
