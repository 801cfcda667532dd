package tideover.web.facts;

import java.util.List;
import tideover.web.edit.Outcome;
import tideover.web.page.Frame;

/**
 * A thing that is to be added.
 *
 * @param address of the site
 * @param base    number of the revision
 * @param section of its kind
 * @param kind    worded
 * @param side    {@code house} or {@code plan}
 * @param groups  its facts, nothing in them
 * @param last    what came of the last try
 */
public record NewThing(
        Frame frame,
        String address,
        long base,
        String section,
        String kind,
        String side,
        List<ThingSheet.Group> groups,
        Outcome last) {
    public NewThing {
        groups = List.copyOf(groups);
    }
}
