package tideover.engine.wiring.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Edge.Part;
import tideover.engine.installation.Installation;
import tideover.engine.site.ByPass;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Electrode;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Meter;
import tideover.engine.site.NeutralEarthLink;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.Status;
import tideover.engine.site.Terminals;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** Reads the rows of the power schedule off the netlist. */
final class PowerRuns {

    private static final String POWER = "WD";
    private static final String EARTH = "WE";

    /** More than any way from the grid has. */
    private static final int LAST = 1000;

    private final Installation installation;
    private final Touched touched;
    private final Nodes nodes;
    private final Tags tags;
    private final PowerNames names;
    private final Dress dress;
    private final Before before;
    private final Map<ThingId, List<Edge>> edges = new HashMap<>();
    private final List<PowerRow> rows = new ArrayList<>();

    PowerRuns(Installation installation, WiringTables tables) {
        this.installation = installation;
        this.touched = new Touched(installation);
        this.nodes = new Nodes(installation);
        this.tags = new Tags(installation);
        this.names = new PowerNames(installation, tags);
        this.dress = new Dress(installation, tables, touched);
        this.before = new Before(installation.site());
        for (Edge edge : installation.edges())
            edges.computeIfAbsent(edge.thing().id(), thing -> new ArrayList<>(8))
                    .add(edge);
    }

    /** Supply cables first, so that a second neutral terminal is left for links and measuring. */
    List<PowerRow> rows() {
        installation.all(Fed.class).stream()
                .filter(fed -> touched.touches(fed) && !isInside(fed))
                .sorted(Comparator.comparingInt(this::distance))
                .forEach(this::feed);
        for (ByPass byPass : installation.byPasses()) if (touched.touches(byPass)) byPass(byPass);
        for (NeutralEarthSwitch link : installation.neutralEarthSwitches())
            if (touched.touches(link) && link.builtInto() == null) linkSwitch(link);
        for (NeutralEarthLink link : installation.all(NeutralEarthLink.class)) if (touched.touches(link)) link(link);
        for (Fed fed : installation.all(Fed.class)) if (installation.status(fed.id()) == Status.NEW) split(fed);
        for (Electrode electrode : installation.electrodes()) if (touched.touches(electrode)) electrode(electrode);
        for (Meter meter : installation.meters()) if (touched.touchesMeasuring(meter)) measuringNeutral(meter);
        return rows;
    }

    /** How many things lie before it on its way from the grid; circuits and inverters come behind all that feeds them. */
    private int distance(Fed fed) {
        int before = installation.wayFromSupply(fed.id()).size();
        return fed instanceof Circuit || fed instanceof Inverter ? before + LAST : before;
    }

    /** An inverter behind its own changeover relay is joined to it inside. */
    private boolean isInside(Fed fed) {
        return fed instanceof Inverter
                && fed.fedFrom() != null
                && installation.find(fed.fedFrom()).orElse(null) instanceof IslandingSwitch device
                && fed.id().equals(device.builtInto());
    }

    private void feed(Fed fed) {
        List<Edge> all = edges(fed, Part.FEED);
        if (all.isEmpty()) return;
        List<Conductor> run = all.stream().map(Edge::conductor).toList();
        String name = tags.next(POWER);
        for (Edge edge : all) {
            Nodes.Place begin = nodes.of(edge.from());
            PowerEnd elsewhere =
                    before.findElsewhere(fed, edge.conductor(), begin).orElse(null);
            rows.add(row(
                    name,
                    fed,
                    edge.part(),
                    edge.conductor(),
                    begin,
                    nodes.of(edge.to()),
                    via(fed, edge.conductor()),
                    elsewhere,
                    dress.supply(fed, edge.conductor(), run)));
        }
    }

    private static List<Via> via(Fed fed, Conductor conductor) {
        List<Via> via = new ArrayList<>(2);
        if (fed.protection() != null && conductor.isLine()) via.add(Via.OVERCURRENT_DEVICE);
        if (fed.rcd() != null && !conductor.isProtective()) via.add(Via.RESIDUAL_DEVICE);
        return via;
    }

    private void byPass(ByPass byPass) {
        List<Edge> all = edges(byPass, Part.BY_PASS);
        if (all.isEmpty()) return;
        String in = tags.next(POWER);
        String out = tags.next(POWER);
        for (Edge edge : all)
            add(
                    in,
                    edge,
                    nodes.of(edge.from()),
                    new Nodes.Place(byPass.id(), Terminals.INCOMING, edge.conductor()),
                    dress.beside(byPass, edge.conductor(), byPass.leadsTo()));
        for (Edge edge : all)
            add(
                    out,
                    edge,
                    new Nodes.Place(byPass.id(), Terminals.OUTGOING, edge.conductor()),
                    nodes.of(edge.to()),
                    dress.beside(byPass, edge.conductor(), byPass.leadsTo()));
    }

    private void linkSwitch(NeutralEarthSwitch link) {
        for (Edge edge : edges(link, Part.LINK_SWITCH)) {
            add(
                    tags.next(POWER),
                    edge,
                    nodes.of(edge.from()),
                    new Nodes.Place(link.id(), Terminals.INCOMING, Conductor.N),
                    dress.beside(link, Conductor.N, link.neutralAt()));
            add(
                    tags.next(EARTH),
                    edge,
                    new Nodes.Place(link.id(), Terminals.OUTGOING, Conductor.PE),
                    nodes.of(edge.to()),
                    dress.beside(link, Conductor.PE, link.neutralAt()));
        }
    }

    private void link(NeutralEarthLink link) {
        for (Edge edge : edges(link, Part.LINK))
            add(
                    tags.next(EARTH),
                    edge,
                    nodes.of(edge.from()),
                    nodes.of(edge.to()),
                    dress.beside(link, Conductor.PE, link.neutralAt()));
    }

    /** Bridges between the bars of a new board in which a PEN parts. */
    private void split(Fed fed) {
        for (Part part : List.of(Part.SPLIT_NEUTRAL, Part.SPLIT_EARTH))
            for (Edge edge : edges(fed, part))
                add(tags.next(EARTH), edge, nodes.of(edge.from()), nodes.of(edge.to()), dress.bridge());
    }

    /** The earthing conductor of an electrode that serves the main earthing terminal. */
    private void electrode(Electrode electrode) {
        for (Edge edge : edges(electrode, Part.ELECTRODE)) {
            if (edge.from() != installation.mainEarth()) continue;
            add(
                    tags.next(EARTH),
                    edge,
                    nodes.of(edge.from()),
                    new Nodes.Place(electrode.id(), null, Conductor.PE),
                    dress.beside(electrode, Conductor.PE, null));
        }
    }

    /** Not in the netlist: it carries no current that matters, but where it ends does. */
    private void measuringNeutral(Meter meter) {
        ThingId bar = meter.measuringNeutralFrom();
        if (bar == null || installation.findFed(bar).isEmpty()) return;
        boolean fused = meter.measuringNeutralFuseA() != null;
        Nodes.Place from = new Nodes.Place(bar, Terminals.OUTGOING, Conductor.N);
        Nodes.Place to = new Nodes.Place(meter.id(), Terminals.INCOMING, Conductor.N);
        rows.add(row(
                tags.next(POWER),
                meter,
                Part.FEED,
                Conductor.N,
                from,
                to,
                fused ? List.of(Via.MEASURING_FUSE) : List.of(),
                null,
                dress.measuringNeutral(meter)));
    }

    private List<Edge> edges(Thing thing, Part part) {
        return edges.getOrDefault(thing.id(), List.of()).stream()
                .filter(edge -> edge.part() == part)
                .sorted(Comparator.comparing(Edge::conductor))
                .toList();
    }

    private void add(String run, Edge edge, Nodes.Place from, Nodes.Place to, Dress.Cut cut) {
        Conductor conductor = to.conductor() == Conductor.PE ? Conductor.PE : from.conductor();
        rows.add(row(run, edge.thing(), edge.part(), conductor, from, to, List.of(), null, cut));
    }

    private PowerRow row(
            String run,
            Thing thing,
            Part part,
            Conductor conductor,
            Nodes.Place from,
            Nodes.Place to,
            List<Via> via,
            @Nullable PowerEnd elsewhere,
            Dress.Cut cut) {
        PowerEnd begin = names.end(from);
        PowerEnd end = names.end(to);
        return new PowerRow(
                run,
                thing.id(),
                part,
                conductor,
                begin,
                end,
                via,
                elsewhere,
                cut.laying(),
                cut.colour() == null ? null : cut.colour().colour(),
                cut.colour() == null ? null : cut.colour().endMark(),
                cut.crossSectionMm2(),
                cut.basis(),
                cut.material(),
                cut.lengthM(),
                dress.ferrule(cut, begin),
                dress.ferrule(cut, end));
    }
}
