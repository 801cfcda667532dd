package tideover.papers.diagram;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Battery;
import tideover.engine.site.ByPass;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.EarthPlace;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Electrode;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Isolator;
import tideover.engine.site.NeutralEarthLink;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.PvArray;
import tideover.engine.site.Supply;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.papers.diagram.Graph.Kind;
import tideover.papers.diagram.Graph.Node;

/** Makes the two graphs of an installation, one for each side of the line, and the crossings between them. */
final class Sides {

    /** Room above the first circuit of a group [mm]. */
    private static final double GROUP_GAP = 2;

    private final Installation installation;
    private final Labels labels;
    private final double pitch;
    private final double textWidth;
    private final CircuitBox.Columns columns;
    private final Graph island = new Graph();
    private final Graph grid = new Graph();
    private final Map<ThingId, Node> nodes = new HashMap<>();
    private final Map<ThingId, Node> busbars = new HashMap<>();
    private final Map<ThingId, Crossing> crossings = new HashMap<>();
    private final List<Crossing> inOrder = new ArrayList<>();

    /**
     * @param pitch     height of the row of a circuit [mm]
     * @param textWidth where names and data of devices are broken into lines [mm]
     */
    Sides(Installation installation, Labels labels, double pitch, double textWidth) {
        this.installation = installation;
        this.labels = labels;
        this.pitch = pitch;
        this.textWidth = textWidth;
        this.columns = new CircuitBox.Columns(installation.circuits(), labels);
        for (IslandingSwitch device : installation.islandingSwitches()) if (!isBehindSwitch(device.id())) cross(device);
        inverters();
        tree();
        byPasses();
        earths();
        unplaced();
    }

    Graph graph(Side side) {
        return side == Side.ISLAND ? island : grid;
    }

    /** In the order in which they are written. */
    List<Crossing> crossings() {
        return inOrder;
    }

    private boolean isBehindSwitch(ThingId thing) {
        List<ThingId> way = installation.wayFromSupply(thing);
        return way.subList(1, way.size()).stream()
                .anyMatch(id -> installation.find(id).orElse(null) instanceof IslandingSwitch);
    }

    private Side side(ThingId thing) {
        return isBehindSwitch(thing) ? Side.ISLAND : Side.GRID;
    }

    private void cross(Thing device) {
        Crossing crossing = new Crossing(device, labels);
        crossings.put(device.id(), crossing);
        inOrder.add(crossing);
    }

    /** Sources come first: they stand above what comes from the line in their column. */
    private void inverters() {
        for (Inverter inverter : installation.inverters()) {
            Side side = side(inverter.id());
            List<Thing> sources = sources(inverter.id());
            List<Node> before = new ArrayList<>();
            for (Thing source : sources) before.add(graph(side).add(SourceBox.of(source, side, labels), false));
            Node node = graph(side).add(InverterBox.of(inverter, side, labels, sources.size()), false);
            nodes.put(inverter.id(), node);
            for (int i = 0; i < sources.size(); i++) {
                nodes.put(sources.get(i).id(), before.get(i));
                graph(side).join(before.get(i), node, i, Kind.DIRECT_CURRENT, sources.get(i));
            }
        }
    }

    private List<Thing> sources(ThingId inverter) {
        List<Thing> sources = new ArrayList<>();
        for (PvArray array : installation.all(PvArray.class))
            if (Objects.equals(array.inverter(), inverter)) sources.add(array);
        for (Battery battery : installation.all(Battery.class)) {
            List<ThingId> all = battery.inverters();
            // A battery of several inverters stands at the first; the others name it in words.
            if (all != null && !all.isEmpty() && all.get(0).equals(inverter)) sources.add(battery);
        }
        return sources;
    }

    private void tree() {
        Supply supply = installation.supply();
        Node root = grid.add(SupplyBox.of(supply, labels), false);
        nodes.put(ThingId.SUPPLY, root);
        busbar(supply, root, Side.GRID);
        for (Crossing crossing : inOrder) crossing.entry(graph(Side.ISLAND).add(new PointBox(), false));
        grow(ThingId.SUPPLY);
        for (Crossing crossing : inOrder) grow(crossing.thing().id());
        // What is fed from nowhere known stands by itself.
        for (Fed fed : installation.all(Fed.class))
            if (!nodes.containsKey(fed.id()) && !crossings.containsKey(fed.id())) {
                place(fed, 0);
                grow(fed.id());
            }
        for (Inverter inverter : installation.inverters()) {
            Node to = outgoing(inverter.fedFrom(), side(inverter.id()));
            if (to != null) graph(side(inverter.id())).join(requireNode(inverter.id()), to, 0, Kind.POWER, inverter);
            grow(inverter.id());
        }
    }

    private void grow(ThingId parent) {
        List<Fed> children = new ArrayList<>();
        for (Fed fed : installation.all(Fed.class))
            if (parent.equals(fed.fedFrom()) && !(fed instanceof Inverter)) children.add(fed);
        // The way to the line runs uppermost, groups stand before single circuits.
        children.sort(Comparator.comparing(child -> leadsToLine(child.id()) ? 0 : child instanceof Circuit ? 2 : 1));
        boolean first = true;
        for (Fed child : children) {
            if (nodes.containsKey(child.id())) continue;
            Side side = side(child.id());
            Node from = outgoing(parent, side);
            Crossing crossing = crossings.get(child.id());
            if (crossing != null) {
                if (crossing.exit() != null || from == null) continue;
                Node exit = graph(Side.GRID).add(new PointBox(), false);
                crossing.exit(exit);
                graph(Side.GRID)
                        .join(
                                from,
                                exit,
                                0,
                                Kind.POWER,
                                installation.find(parent).orElse(child));
                continue;
            }
            Node node = place(child, child instanceof Circuit && first ? GROUP_GAP : 0);
            if (child instanceof Circuit) first = false;
            if (from != null) graph(side).join(from, node, 0, Kind.POWER, child);
            grow(child.id());
        }
    }

    /** Whether an islanding switch on the line is fed through a thing. */
    private boolean leadsToLine(ThingId thing) {
        return crossings.keySet().stream()
                .anyMatch(device -> installation.wayFromSupply(device).contains(thing));
    }

    private Node place(Fed thing, double above) {
        Side side = side(thing.id());
        Box box = thing instanceof Circuit circuit
                ? new CircuitBox(circuit, side, labels, columns, pitch, above)
                : DeviceBox.of(thing, side, labels, textWidth);
        Node node = graph(side).add(box, thing instanceof Circuit);
        nodes.put(thing.id(), node);
        if (!(thing instanceof Circuit)) busbar(thing, node, side);
        return node;
    }

    /** Where an inverter is connected, the outgoing terminals are a point of their own: it joins behind the devices. */
    private void busbar(Thing thing, Node node, Side side) {
        boolean joined =
                installation.inverters().stream().anyMatch(i -> thing.id().equals(i.fedFrom()));
        if (!joined) return;
        Node point = graph(side).add(new PointBox(), false);
        graph(side).join(node, point, 0, Kind.POWER, thing);
        busbars.put(thing.id(), point);
    }

    private Node requireNode(ThingId thing) {
        return Objects.requireNonNull(nodes.get(thing));
    }

    /** Where conductors leave a thing on a side: behind a crossing that is its entry there. */
    private @Nullable Node outgoing(@Nullable ThingId thing, Side side) {
        if (thing == null) return null;
        Crossing crossing = crossings.get(thing);
        if (crossing != null) return side == Side.ISLAND ? crossing.entry() : null;
        Node node = busbars.getOrDefault(thing, nodes.get(thing));
        return node != null && graph(side).nodes().contains(node) ? node : null;
    }

    private void byPasses() {
        for (ByPass byPass : installation.byPasses()) {
            Crossing past = byPass.leadsTo() == null ? null : crossings.get(byPass.leadsTo());
            Node from = outgoing(byPass.fedFrom(), Side.GRID);
            Node to = past != null ? past.entry() : outgoing(byPass.leadsTo(), Side.ISLAND);
            if (from == null || to == null) {
                note(byPass);
                continue;
            }
            Crossing crossing = new Crossing(byPass, labels);
            if (past != null && Objects.equals(((IslandingSwitch) past.thing()).fedFrom(), byPass.fedFrom())) {
                past.beside(crossing);
                continue;
            }
            Node exit = graph(Side.GRID).add(new PointBox(), false);
            Thing before =
                    installation.find(Objects.requireNonNull(byPass.fedFrom())).orElse(byPass);
            graph(Side.GRID).join(from, exit, 0, Kind.POWER, before);
            crossing.exit(exit);
            Node entry = graph(Side.ISLAND).add(new PointBox(), false);
            graph(Side.ISLAND).join(entry, to, 0, Kind.POWER, byPass);
            crossing.entry(entry);
            inOrder.add(crossing);
        }
    }

    private void earths() {
        for (NeutralEarthSwitch link : installation.neutralEarthSwitches())
            link(link, link.neutralAt(), link.earthAt());
        for (NeutralEarthLink link : installation.all(NeutralEarthLink.class))
            link(link, link.neutralAt(), link.earthAt());
        List<Thing> main = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        for (Electrode electrode : installation.electrodes()) {
            String line = labels.text(
                    "diagram.electrode", labels.name(electrode), labels.amount(electrode.resistanceOhm(), Unit.OHM));
            if (electrode.earth() == EarthPlace.SEPARATE) {
                EarthBox box = EarthBox.of(List.of(electrode), Conductor.PE, labels, line, List.of(), 1.5 * textWidth);
                near(graph(Side.GRID).add(box, false), electrode);
            } else {
                main.add(electrode);
                lines.add(line);
            }
        }
        String name = labels.wording().heading(EarthPlace.MAIN_EARTH);
        Node node = graph(Side.GRID).add(EarthBox.of(main, Conductor.PE, labels, name, lines, 1.5 * textWidth), false);
        ThingId split = installation.supply().penSplitAt();
        Node from = outgoing(split == null ? ThingId.SUPPLY : split, Side.GRID);
        EarthingSystem system = installation.supply().earthingSystem();
        boolean fromNetwork = system != null && system != EarthingSystem.TT && system != EarthingSystem.IT;
        if (from != null && fromNetwork) graph(Side.GRID).join(from, node, 0, Kind.EARTH, installation.supply());
        else near(node, installation.supply());
    }

    private void near(Node node, Thing thing) {
        graph(Side.GRID).join(requireNode(ThingId.SUPPLY), node, 0, Kind.NEAR, thing);
    }

    private void link(Thing link, @Nullable ThingId neutralAt, @Nullable ThingId earthAt) {
        Side side = neutralAt != null && (crossings.containsKey(neutralAt) || isBehindSwitch(neutralAt))
                ? Side.ISLAND
                : Side.GRID;
        Node from = outgoing(neutralAt, side);
        if (from == null) {
            note(link);
            return;
        }
        ThingId earth = earthAt == null ? ThingId.MAIN_EARTH : earthAt;
        String to = labels.wording().text("diagram.to", PhraseArg.name(earth));
        EarthBox box = EarthBox.of(List.of(link), Conductor.N, labels, labels.name(link), List.of(to), 1.3 * textWidth);
        graph(side).join(from, graph(side).add(box, false), 0, Kind.EARTH, link);
    }

    private void unplaced() {
        for (Thing source : installation.things())
            if ((source instanceof PvArray || source instanceof Battery) && !nodes.containsKey(source.id()))
                note(source);
        for (Isolator isolator : installation.all(Isolator.class)) {
            ThingId source = isolator.isolates();
            if (source == null || !nodes.containsKey(source)) note(isolator);
        }
    }

    private void note(Thing thing) {
        near(graph(Side.GRID).add(NoteBox.of(thing, labels), false), thing);
    }
}
