package tideover.engine.site;

import java.util.List;

/** The house as found. Ids are unique in the whole site. */
public record House(Place place, GridOperator gridOperator, Supply supply, List<Thing> things) {
    public House {
        things = List.copyOf(things);
    }
}
