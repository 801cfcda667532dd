package tideover.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tideover.engine.site.Evidence;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;

/** The words of a site file that are no fields, and the ids no thing may have. */
final class SiteKeys {
    static final String FORMAT = "format";
    static final String HOUSE = "house";
    static final String PLAN = "plan";
    static final String BUILT = Evidence.BUILT;
    static final String EVIDENCE = "evidence";
    static final String VARIANT_OF = "variantOf";

    /** The format this program reads and writes. */
    static final int FORMAT_VERSION = 1;

    /** Where things are stated, the loudest last. */
    static final List<String> SIDES = List.of(HOUSE, PLAN, BUILT);

    static final List<String> ROOT = List.of(FORMAT, HOUSE, PLAN, BUILT, EVIDENCE);
    static final List<String> VARIANT = List.of(FORMAT, VARIANT_OF, "story", "set", "add", BUILT, "remove");
    static final List<String> HOUSE_PARTS = withSections(List.of("place", "gridOperator", "supply"), List.of());
    static final List<String> PLAN_PARTS = withSections(List.of(), List.of("removed", "accepted"));
    static final List<String> BUILT_PARTS = withSections(List.of(), List.of("swapped", "removed"));

    /** Names of what is in every house, and words of the format. */
    static final Set<String> RESERVED = Set.of(
            ThingId.PLACE.text(),
            ThingId.GRID_OPERATOR.text(),
            ThingId.SUPPLY.text(),
            ThingId.MAIN_EARTH.text(),
            HOUSE,
            PLAN,
            BUILT,
            EVIDENCE,
            "accepted");

    private SiteKeys() {}

    /** Whether a part of the house is one thing and no list. */
    static boolean isSingle(String part) {
        return part.equals("place") || part.equals("gridOperator") || part.equals("supply");
    }

    private static List<String> withSections(List<String> before, List<String> behind) {
        List<String> all = new ArrayList<>(before);
        for (ThingKind kind : ThingKind.values()) all.add(kind.section());
        all.addAll(behind);
        return List.copyOf(all);
    }
}
