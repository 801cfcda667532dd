package tideover.files;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

/** The tree of a site, in which whoever asks for many things finds each at once. */
final class StatedThings {
    private static final Spot SPOT = Spot.whole("");

    private final Mapping root;
    private @Nullable Map<String, List<Stated>> byId;

    StatedThings(Mapping root) {
        this.root = root;
    }

    /** What one side says of a thing. */
    private record Stated(Place place, Mapping thing) {}

    Mapping root() {
        return root;
    }

    /** One side of the site, empty where nothing is stated there. */
    Mapping side(String side) {
        return side(root, side);
    }

    private static Mapping side(Mapping tree, String side) {
        return tree.find(side).orElse(null) instanceof Mapping stated ? stated : Mapping.of(SPOT, List.of());
    }

    /** What is stated at a place; nothing where nothing is. */
    @Nullable
    Mapping find(Place place) {
        if (SiteKeys.isSingle(place.section()))
            return side(place.side()).find(place.section()).orElse(null) instanceof Mapping single ? single : null;
        for (Stated stated : stated(place.id()))
            if (stated.place.side().equals(place.side())
                    && stated.place.section().equals(place.section())) return stated.thing;
        return null;
    }

    boolean isStated(Place place) {
        return SiteKeys.SIDES.stream().anyMatch(side -> find(place.on(side)) != null);
    }

    /** The place where a thing is stated last; nothing where it is not stated at all. */
    @Nullable
    Place lastOf(String id) {
        for (ThingId single : List.of(ThingId.PLACE, ThingId.GRID_OPERATOR, ThingId.SUPPLY))
            if (single.text().equals(id))
                return new Place(SiteKeys.HOUSE, single.equals(ThingId.GRID_OPERATOR) ? "gridOperator" : id, id);
        List<Stated> all = stated(id);
        return all.isEmpty() ? null : all.get(0).place;
    }

    /** Everything stated of an id, the loudest side first. */
    private List<Stated> stated(String id) {
        if (byId == null) byId = index();
        return byId.getOrDefault(id, List.of());
    }

    private Map<String, List<Stated>> index() {
        Map<String, List<Stated>> index = new HashMap<>();
        for (String side : List.of(SiteKeys.BUILT, SiteKeys.PLAN, SiteKeys.HOUSE)) {
            Mapping around = side(side);
            for (ThingKind kind : ThingKind.values())
                if (around.find(kind.section()).orElse(null) instanceof Sequence list)
                    for (Node item : list.items())
                        if (item instanceof Mapping thing) add(index, side, kind.section(), thing);
        }
        return index;
    }

    private static void add(Map<String, List<Stated>> index, String side, String section, Mapping thing) {
        String id = Removal.text(thing, "id");
        index.computeIfAbsent(id, each -> new ArrayList<>(2)).add(new Stated(new Place(side, section, id), thing));
    }

    /**
     * Where a thing is stated, or may be.
     *
     * @param side    as found, in the plan or as built
     * @param section its list, or itself where there is only one of its kind
     */
    record Place(String side, String section, String id) {
        /** The same thing on another side. */
        Place on(String otherSide) {
            return new Place(otherSide, section, id);
        }

        /** The sides whose statements hold on this one, the loudest last. */
        List<String> sidesUpToThis() {
            return SiteKeys.SIDES.subList(0, SiteKeys.SIDES.indexOf(side) + 1);
        }

        /** The tree with this stated instead, in its old place or last in its list; nothing takes it out. */
        Mapping put(Mapping tree, @Nullable Mapping thing) {
            Mapping around = StatedThings.side(tree, side);
            Node part = thing != null && SiteKeys.isSingle(section) ? thing : list(around, thing);
            return tree.with(new Entry(side, SPOT, around.with(new Entry(section, SPOT, part))));
        }

        private Sequence list(Mapping around, @Nullable Mapping thing) {
            List<Node> items = new ArrayList<>(
                    around.find(section).orElse(null) instanceof Sequence list ? list.items() : List.of());
            int at = -1;
            for (int i = 0; i < items.size(); i++)
                if (items.get(i) instanceof Mapping item
                        && Removal.text(item, "id").equals(id)) at = i;
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
}
