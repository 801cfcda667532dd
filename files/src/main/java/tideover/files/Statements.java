package tideover.files;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;
import tideover.files.Reference.Side;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Spot;

/** All things of one file as stated, by side; a later side speaks louder. */
final class Statements {
    /** A thing as stated at one place of the file. */
    record Stated(ThingKind kind, Thing thing, Mapping node) {
        /** Where a field of it stands; where the thing begins if it does not state the field. */
        Spot spot(String field) {
            Optional<Node> value = node.find(field);
            return value.map(Node::spot).orElse(node.spot());
        }
    }

    private final Map<Side, Map<ThingId, Stated>> things = new EnumMap<>(Side.class);
    private final Map<Side, Set<ThingId>> removed = new EnumMap<>(Side.class);

    Statements() {
        for (Side side : Side.values()) {
            things.put(side, new LinkedHashMap<>());
            removed.put(side, new HashSet<>());
        }
    }

    /** What one side states, in the order of the file. */
    Map<ThingId, Stated> of(Side side) {
        return things.getOrDefault(side, Map.of());
    }

    void put(Side side, ThingId id, Stated stated) {
        things.getOrDefault(side, new LinkedHashMap<>()).put(id, stated);
    }

    void remove(Side side, Collection<ThingId> ids) {
        removed.getOrDefault(side, new HashSet<>()).addAll(ids);
    }

    /** The things of one side alone. */
    List<Thing> things(Side side) {
        return of(side).values().stream().map(Stated::thing).toList();
    }

    /** Every id stated on a side up to this one. */
    Set<ThingId> ids(Side upTo) {
        Set<ThingId> ids = new LinkedHashSet<>();
        for (Side side : upTo.andBefore()) ids.addAll(of(side).keySet());
        return ids;
    }

    /** Where a thing is stated first on a side up to this one. */
    @Nullable
    Stated first(ThingId id, Side upTo) {
        List<Stated> all = latestFirst(id, upTo);
        return all.isEmpty() ? null : all.get(all.size() - 1);
    }

    /** Every statement of a thing on sides up to this one, the loudest first. */
    List<Stated> latestFirst(ThingId id, Side upTo) {
        List<Stated> all = new ArrayList<>(3);
        for (Side side : upTo.andBefore()) {
            Stated stated = of(side).get(id);
            if (stated != null) all.add(0, stated);
        }
        return all;
    }

    /** The first side that takes a thing out; nothing where it stays. */
    @Nullable
    Side removedBy(ThingId id, Side upTo) {
        for (Side side : upTo.andBefore())
            if (removed.getOrDefault(side, Set.of()).contains(id)) return side;
        return null;
    }
}
