package tideover.engine.wiring.schedule;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;

/** Tells of which thing, side and conductor a node of the netlist is. */
final class Nodes {

    /** What a node is; an earth has no side, and PE as its conductor. */
    record Place(ThingId thing, @Nullable Terminals side, Conductor conductor) {}

    private final Map<Integer, Place> places = new HashMap<>();

    Nodes(Installation installation) {
        add(installation, ThingId.SUPPLY);
        for (Fed fed : installation.all(Fed.class)) add(installation, fed.id());
        for (Edge edge : installation.edges())
            if (edge.part() == Edge.Part.ELECTRODE)
                places.put(edge.from(), new Place(edge.thing().id(), null, Conductor.PE));
        places.put(installation.mainEarth(), new Place(ThingId.MAIN_EARTH, null, Conductor.PE));
    }

    private void add(Installation installation, ThingId thing) {
        for (Terminals side : Terminals.values())
            for (Conductor conductor : Conductor.values())
                places.put(installation.node(thing, side, conductor), new Place(thing, side, conductor));
    }

    Place of(int node) {
        Place place = places.get(node);
        if (place == null) throw new IllegalArgumentException("node %d is no terminal".formatted(node));
        return place;
    }
}
