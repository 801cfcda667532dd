package tideover.files;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Entry;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Node.Scalar;
import tideover.files.yaml.Node.Sequence;
import tideover.files.yaml.Node.Style;
import tideover.files.yaml.Spot;

/**
 * Where a thing is stated, or may be, in the tree of a site.
 *
 * @param side    as found, in the plan or as built
 * @param section its list, or itself where there is only one of its kind
 */
record ThingPlace(String side, String section, String id) {
    private static final Spot SPOT = Spot.whole("");

    /** The place where a thing is stated last; nothing where it is not stated at all. */
    static @Nullable ThingPlace lastOf(Mapping tree, String id) {
        for (ThingId single : List.of(ThingId.PLACE, ThingId.GRID_OPERATOR, ThingId.SUPPLY))
            if (single.text().equals(id))
                return new ThingPlace(SiteKeys.HOUSE, single.equals(ThingId.GRID_OPERATOR) ? "gridOperator" : id, id);
        for (String side : List.of(SiteKeys.BUILT, SiteKeys.PLAN, SiteKeys.HOUSE))
            for (ThingKind kind : ThingKind.values()) {
                ThingPlace place = new ThingPlace(side, kind.section(), id);
                if (place.find(tree) != null) return place;
            }
        return null;
    }

    /** One side of the site, empty where nothing is stated there. */
    static Mapping side(Mapping tree, String side) {
        return tree.find(side).orElse(null) instanceof Mapping stated ? stated : Mapping.of(SPOT, List.of());
    }

    /** The same thing on another side. */
    ThingPlace on(String otherSide) {
        return new ThingPlace(otherSide, section, id);
    }

    /** The sides whose statements hold on this one, the loudest last. */
    List<String> sidesUpToThis() {
        return SiteKeys.SIDES.subList(0, SiteKeys.SIDES.indexOf(side) + 1);
    }

    boolean isStated(Mapping tree) {
        return SiteKeys.SIDES.stream().anyMatch(any -> on(any).find(tree) != null);
    }

    /** What is stated; nothing where nothing is. */
    @Nullable
    Mapping find(Mapping tree) {
        if (!(tree.find(side).orElse(null) instanceof Mapping around)) return null;
        Node part = around.find(section).orElse(null);
        if (part instanceof Mapping single) return single;
        if (!(part instanceof Sequence list)) return null;
        for (Node item : list.items())
            if (item instanceof Mapping mapping && Removal.text(mapping, "id").equals(id)) return mapping;
        return null;
    }

    /** The tree with this stated instead, in its old place or last in its list; nothing takes it out. */
    Mapping put(Mapping tree, @Nullable Mapping thing) {
        Mapping around = side(tree, side);
        Node part = thing != null && SiteKeys.isSingle(section) ? thing : list(around, thing);
        return tree.with(new Entry(side, SPOT, around.with(new Entry(section, SPOT, part))));
    }

    private Sequence list(Mapping around, @Nullable Mapping thing) {
        List<Node> items =
                new ArrayList<>(around.find(section).orElse(null) instanceof Sequence list ? list.items() : List.of());
        int at = -1;
        for (int i = 0; i < items.size(); i++)
            if (items.get(i) instanceof Mapping item && Removal.text(item, "id").equals(id)) at = i;
        if (thing == null && at >= 0) items.remove(at);
        else if (thing != null && at >= 0) items.set(at, thing);
        else if (thing != null) items.add(thing);
        return Sequence.of(SPOT, items);
    }

    /** What names the thing. */
    Entry idEntry() {
        return new Entry("id", SPOT, new Scalar(SPOT, id, Style.QUOTED));
    }
}
