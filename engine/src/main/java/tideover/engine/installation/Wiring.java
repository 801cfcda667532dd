package tideover.engine.installation;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge.Part;
import tideover.engine.site.ByPass;
import tideover.engine.site.Conductor;
import tideover.engine.site.EarthPlace;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Electrode;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.NeutralEarthLink;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.Supply;
import tideover.engine.site.SupplyLines;
import tideover.engine.site.Terminals;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** Makes the netlist: joins the terminals of all things as the site says they are joined. */
final class Wiring {

    private final Supply supply;
    private final Map<ThingId, Thing> things;
    private final Map<ThingId, Integer> indexes = new LinkedHashMap<>();
    private final Map<ThingId, Set<Conductor>> conductors = new HashMap<>();
    private final Map<ThingId, ThingId> parents = new HashMap<>();
    private final Map<ThingId, List<FactId>> gaps = new HashMap<>();
    private final Map<ThingId, Integer> earths = new HashMap<>();
    private final Set<Integer> splits = new HashSet<>();
    private final List<Edge> edges = new ArrayList<>(512);
    private final int mainEarth;
    private final int remoteEarth;

    Wiring(Supply supply, Map<ThingId, Thing> things) {
        this.supply = supply;
        this.things = things;
        indexes.put(ThingId.SUPPLY, 0);
        for (Thing thing : things.values()) if (thing instanceof Fed) indexes.put(thing.id(), indexes.size());
        mainEarth = indexes.size() * Netlist.PER_THING;
        remoteEarth = mainEarth + 1;
        earths.put(ThingId.MAIN_EARTH, mainEarth);
        int next = remoteEarth + 1;
        for (Thing thing : things.values())
            if (thing instanceof Electrode electrode)
                earths.put(electrode.id(), electrode.earth() == EarthPlace.SEPARATE ? next++ : mainEarth);
        conductors.put(ThingId.SUPPLY, supplyConductors());
        for (Thing thing : things.values()) if (thing instanceof Fed fed) resolve(fed, new HashSet<>());
    }

    Netlist netlist() {
        earthOfSupply();
        for (Thing thing : things.values()) {
            if (thing instanceof Fed fed) {
                feed(fed);
                through(fed);
            } else if (thing instanceof NeutralEarthLink link) {
                link(link, Part.LINK, link.neutralAt(), link.earthAt());
            } else if (thing instanceof NeutralEarthSwitch link) {
                link(link, Part.LINK_SWITCH, link.neutralAt(), link.earthAt());
            } else if (thing instanceof ByPass byPass) {
                byPass(byPass);
            } else if (thing instanceof Electrode electrode) {
                edge(requireNonNull(earths.get(electrode.id())), remoteEarth, Part.ELECTRODE, Conductor.PE, electrode);
            }
        }
        Map<ThingId, Thing> fed = new LinkedHashMap<>();
        things.forEach((id, thing) -> {
            if (thing instanceof Fed) fed.put(id, thing);
        });
        int nodeCount = Math.max(
                        remoteEarth,
                        earths.values().stream().mapToInt(e -> e).max().orElse(0))
                + 1;
        return new Netlist(indexes, nodeCount, edges, fed, parents, gaps, has(ThingId.SUPPLY, Conductor.PEN));
    }

    private Set<Conductor> supplyConductors() {
        Set<Conductor> set = EnumSet.of(Conductor.L1);
        if (supply.lines() != SupplyLines.ONE) {
            set.add(Conductor.L2);
            set.add(Conductor.L3);
        }
        EarthingSystem system = supply.earthingSystem();
        if (system == EarthingSystem.TN_C_S || system == EarthingSystem.TN_C) {
            set.add(Conductor.PEN);
        } else {
            set.add(Conductor.N);
            if (system == EarthingSystem.TN_S) set.add(Conductor.PE);
        }
        return set;
    }

    /** Which conductors a thing has; where nobody has looked, those that what feeds it can offer. */
    private Set<Conductor> resolve(Fed fed, Set<ThingId> under) {
        Set<Conductor> known = conductors.get(fed.id());
        if (known != null) return known;
        if (!under.add(fed.id())) throw new IllegalArgumentException("%s is fed in a circle".formatted(fed.id()));
        List<FactId> missing = new ArrayList<>(0);
        Set<Conductor> offered = supplyConductors();
        ThingId parent = fed.fedFrom();
        if (parent == null || !indexes.containsKey(parent)) {
            missing.add(fed.fact("fedFrom"));
        } else {
            parents.put(fed.id(), parent);
            offered = things.get(parent) instanceof Fed above ? resolve(above, under) : offered;
        }
        if (fed.conductors() == null) missing.add(fed.fact("conductors"));
        if (fed instanceof IslandingSwitch device && device.poles() == null) missing.add(fed.fact("poles"));
        if (!missing.isEmpty()) gaps.put(fed.id(), missing);
        List<Conductor> stated = fed.conductors();
        Set<Conductor> own = stated == null || stated.isEmpty() ? EnumSet.copyOf(offered) : EnumSet.copyOf(stated);
        conductors.put(fed.id(), own);
        return own;
    }

    private boolean has(ThingId thing, Conductor conductor) {
        Set<Conductor> set = conductors.get(thing);
        return set != null && set.contains(conductor);
    }

    private int node(ThingId thing, Terminals side, Conductor conductor) {
        return Netlist.node(requireNonNull(indexes.get(thing)), side, conductor);
    }

    private void edge(int from, int to, Part part, Conductor conductor, Thing thing) {
        edges.add(new Edge(edges.size(), from, to, part, conductor, thing));
    }

    private void earthOfSupply() {
        boolean pen = has(ThingId.SUPPLY, Conductor.PEN);
        int neutral = node(ThingId.SUPPLY, Terminals.OUTGOING, pen ? Conductor.PEN : Conductor.N);
        edge(neutral, remoteEarth, Part.NETWORK_EARTH, Conductor.PE, supply);
        if (pen) {
            ThingId split = supply.penSplitAt();
            edge(
                    protective(split != null && has(split, Conductor.PEN) ? split : ThingId.SUPPLY),
                    mainEarth,
                    Part.BOND,
                    Conductor.PE,
                    supply);
        } else if (has(ThingId.SUPPLY, Conductor.PE)) {
            int pe = node(ThingId.SUPPLY, Terminals.OUTGOING, Conductor.PE);
            // TN-S: the network's own protective conductor starts at the earthed point of its neutral.
            edge(neutral, pe, Part.SPLIT_EARTH, Conductor.PE, supply);
            edge(pe, mainEarth, Part.BOND, Conductor.PE, supply);
        }
    }

    private void feed(Fed fed) {
        ThingId parent = parents.get(fed.id());
        ThingId named = fed.neutralFrom();
        ThingId neutralFrom = named != null && indexes.containsKey(named) ? named : parent;
        for (Conductor conductor : requireNonNull(conductors.get(fed.id()))) {
            int to = node(fed.id(), Terminals.INCOMING, conductor);
            if (conductor.isLine() && parent != null) {
                edge(node(parent, Terminals.OUTGOING, conductor), to, Part.FEED, conductor, fed);
            } else if (conductor.isNeutral() && neutralFrom != null) {
                edge(neutral(neutralFrom, conductor), to, Part.FEED, conductor, fed);
            } else if (conductor == Conductor.PE) {
                edge(protective(parent), to, Part.FEED, conductor, fed);
            }
        }
    }

    /** Where a neutral taken from a thing begins. A PEN taken from a neutral bar begins there too. */
    private int neutral(ThingId thing, Conductor wanted) {
        if (!has(thing, Conductor.PEN)) return node(thing, Terminals.OUTGOING, Conductor.N);
        int pen = node(thing, Terminals.OUTGOING, Conductor.PEN);
        if (wanted == Conductor.PEN) return pen;
        int neutral = node(thing, Terminals.OUTGOING, Conductor.N);
        if (splits.add(neutral)) edge(pen, neutral, Part.SPLIT_NEUTRAL, Conductor.N, requireThing(thing));
        return neutral;
    }

    /** Where a protective conductor taken from a thing begins; the main earthing terminal where it has none. */
    private int protective(@Nullable ThingId thing) {
        if (thing == null) return mainEarth;
        int protective = node(thing, Terminals.OUTGOING, Conductor.PE);
        if (has(thing, Conductor.PE)) return protective;
        if (!has(thing, Conductor.PEN)) return mainEarth;
        int pen = node(thing, Terminals.OUTGOING, Conductor.PEN);
        if (splits.add(protective)) edge(pen, protective, Part.SPLIT_EARTH, Conductor.PE, requireThing(thing));
        return protective;
    }

    private Thing requireThing(ThingId id) {
        Thing thing = things.get(id);
        return thing == null ? supply : thing;
    }

    private void through(Fed fed) {
        int poles = fed instanceof IslandingSwitch device ? poles(device) : 0;
        for (Conductor conductor : requireNonNull(conductors.get(fed.id()))) {
            boolean switched = poles > 0 && conductor != Conductor.PE;
            if (switched) poles--;
            edge(
                    node(fed.id(), Terminals.INCOMING, conductor),
                    node(fed.id(), Terminals.OUTGOING, conductor),
                    switched ? Part.CONTACT : Part.THROUGH,
                    conductor,
                    fed);
        }
    }

    /** Poles in the order of the conductors, lines first; unknown poles are taken as the lines alone. */
    private int poles(IslandingSwitch device) {
        Integer poles = device.poles();
        if (poles != null) return poles;
        return (int) requireNonNull(conductors.get(device.id())).stream()
                .filter(Conductor::isLine)
                .count();
    }

    private void link(Thing thing, Part part, @Nullable ThingId neutralAt, @Nullable ThingId earthAt) {
        if (neutralAt == null || !indexes.containsKey(neutralAt)) return;
        Integer electrode = earthAt == null ? Integer.valueOf(mainEarth) : earths.get(earthAt);
        if (electrode == null && !indexes.containsKey(earthAt)) return;
        int earth = electrode != null ? electrode : protective(earthAt);
        edge(neutral(neutralAt, Conductor.N), earth, part, Conductor.N, thing);
    }

    private void byPass(ByPass byPass) {
        ThingId from = byPass.fedFrom();
        ThingId to = byPass.leadsTo();
        if (from == null || to == null || !indexes.containsKey(from) || !indexes.containsKey(to)) return;
        Set<Conductor> shared = EnumSet.copyOf(conductors.get(from));
        shared.retainAll(conductors.get(to));
        shared.remove(Conductor.PE);
        Integer stated = byPass.poles();
        int poles = stated != null ? stated : shared.size();
        for (Conductor conductor : shared)
            if (poles-- > 0)
                edge(
                        node(from, Terminals.OUTGOING, conductor),
                        node(to, Terminals.OUTGOING, conductor),
                        Part.BY_PASS,
                        conductor,
                        byPass);
    }
}
