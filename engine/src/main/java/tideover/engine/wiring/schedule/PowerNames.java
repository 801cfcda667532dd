package tideover.engine.wiring.schedule;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.site.ByPass;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.PowerTerminals;
import tideover.engine.site.Terminals;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** The maker's names of power terminals, and what he demands of them. */
final class PowerNames {

    private final Installation installation;
    private final Tags tags;
    private final Map<ThingId, Map<Terminals, PowerTerminals>> stated = new HashMap<>();
    private final Set<PowerTerminals> neutralsInUse = new HashSet<>();

    PowerNames(Installation installation, Tags tags) {
        this.installation = installation;
        this.tags = tags;
        for (PowerTerminals set : installation.all(PowerTerminals.class))
            if (set.at() != null)
                stated.computeIfAbsent(set.at(), at -> new HashMap<>())
                        .put(set.side() == null ? Terminals.INCOMING : set.side(), set);
    }

    /**
     * One end of a conductor. Where a set has two neutral terminals, the first neutral asked for is at the one in line
     * with the lines, any further one at the second.
     */
    PowerEnd end(Nodes.Place place) {
        ThingId thing = place.thing();
        PowerTerminals set = set(thing, place.side());
        String name = findName(place, set);
        // What has no terminal of the set, such as the PE past a meter, is not tightened there.
        PowerTerminals tightened = set != null && (set.names() == null || name != null) ? set : null;
        return new PowerEnd(
                thing,
                place.side(),
                tags.of(thing),
                name == null ? place.conductor().name() : name,
                tightened == null ? null : tightened.torqueNm(),
                tightened == null ? null : tightened.strippedLengthM());
    }

    private @Nullable String findName(Nodes.Place place, @Nullable PowerTerminals set) {
        Conductor conductor = place.conductor();
        if (set != null && conductor == Conductor.N && set.secondNeutral() != null && !neutralsInUse.add(set))
            return set.secondNeutral();
        List<Conductor> conductors = conductors(place);
        String name = null;
        if (set != null && set.names() != null) name = named(set.names(), conductors, conductor);
        if (name == null
                && place.side() != null
                && installation.find(place.thing()).orElse(null) instanceof IslandingSwitch device)
            name = named(half(device.terminals(), place.side()), conductors, conductor);
        return name;
    }

    /** The conductors of a thing in the order of its terminals. */
    private @Nullable List<Conductor> conductors(Nodes.Place place) {
        Thing thing = installation.find(place.thing()).orElse(null);
        if (thing instanceof Fed fed) return fed.conductors();
        if (!(thing instanceof ByPass)) return List.of(place.conductor());
        return installation.edges().stream()
                .filter(edge ->
                        edge.part() == Edge.Part.BY_PASS && edge.thing().id().equals(thing.id()))
                .map(Edge::conductor)
                .sorted()
                .toList();
    }

    /** An inverter or a load has one set only, on whichever side it is told. */
    private @Nullable PowerTerminals set(ThingId thing, @Nullable Terminals side) {
        Map<Terminals, PowerTerminals> sets = stated.getOrDefault(thing, Map.of());
        PowerTerminals set = sets.get(side == null ? Terminals.INCOMING : side);
        if (set != null) return set;
        Fed fed = installation.findFed(thing).orElse(null);
        boolean hasOneSet = side == null || fed == null || fed instanceof Inverter || fed instanceof Circuit;
        return hasOneSet ? sets.values().stream().findFirst().orElse(null) : null;
    }

    /** Grid side first, island side behind it. */
    private static List<String> half(@Nullable List<String> terminals, Terminals side) {
        if (terminals == null || terminals.size() % 2 != 0) return List.of();
        int middle = terminals.size() / 2;
        return side == Terminals.INCOMING ? terminals.subList(0, middle) : terminals.subList(middle, terminals.size());
    }

    /** Names are in the order of the conductors; most switches have no terminal for the protective conductor. */
    private static @Nullable String named(
            List<String> names, @Nullable List<Conductor> conductors, Conductor conductor) {
        if (conductors == null) return null;
        List<Conductor> live =
                conductors.stream().filter(each -> each != Conductor.PE).toList();
        List<Conductor> order = names.size() == conductors.size() ? conductors : live;
        int index = order.indexOf(conductor);
        return index < 0 || order.size() != names.size() ? null : names.get(index);
    }
}
