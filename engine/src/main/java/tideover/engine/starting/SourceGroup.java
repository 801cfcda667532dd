package tideover.engine.starting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.ThingId;

/** Sources that stand together, and the circuits that hang on them in one state. */
public final class SourceGroup {

    private final List<ThingId> sources;
    private final List<Circuit> circuits;
    private final List<FactId> missing;
    private final List<Capacity> capacities;

    private SourceGroup(
            Set<ThingId> sources, List<Circuit> circuits, Installation installation, double nominalVoltageV) {
        this.sources = sources.stream().sorted().toList();
        this.circuits = List.copyOf(circuits);
        List<Inverter> inverters = new ArrayList<>();
        for (Inverter inverter : installation.inverters()) if (sources.contains(inverter.id())) inverters.add(inverter);
        missing = missing(inverters);
        capacities = sources.contains(ThingId.SUPPLY)
                ? ofGrid(installation)
                : ofInverters(inverters, installation, nominalVoltageV);
    }

    /** The grid as {@code supply}, or inverters that form the voltage, in the order of their ids. */
    public List<ThingId> sources() {
        return sources;
    }

    /** Circuits fed by them. */
    public List<Circuit> circuits() {
        return circuits;
    }

    /** Continuous currents nobody has stated: without them nothing can be said. */
    List<FactId> missing() {
        return missing;
    }

    /** What it can give: on each line, and over all lines where the ratings of all its inverters are known. */
    List<Capacity> capacities() {
        return capacities;
    }

    /** All groups of a state; three one-phase inverters are one where something hangs on several of them. */
    static List<SourceGroup> of(Installation installation, View view, double nominalVoltageV) {
        List<Set<ThingId>> sources = new ArrayList<>();
        List<List<Circuit>> circuits = new ArrayList<>();
        for (Circuit circuit : installation.circuits()) {
            Set<ThingId> at = sourcesAt(circuit, view);
            if (at.isEmpty()) continue;
            List<Circuit> together = new ArrayList<>();
            for (int i = sources.size() - 1; i >= 0; i--) {
                if (sources.get(i).stream().noneMatch(at::contains)) continue;
                at.addAll(sources.remove(i));
                together.addAll(0, circuits.remove(i));
            }
            together.add(circuit);
            sources.add(at);
            circuits.add(together);
        }
        List<SourceGroup> groups = new ArrayList<>();
        for (int i = 0; i < sources.size(); i++)
            groups.add(new SourceGroup(sources.get(i), circuits.get(i), installation, nominalVoltageV));
        return groups;
    }

    private static Set<ThingId> sourcesAt(Fed thing, View view) {
        Set<ThingId> at = new LinkedHashSet<>(4);
        for (Conductor line : view.lines(thing)) at.addAll(view.sourcesAt(thing.id(), line));
        return at;
    }

    private static List<FactId> missing(List<Inverter> inverters) {
        List<FactId> missing = new ArrayList<>(0);
        for (Inverter inverter : inverters)
            if (inverter.lineCurrentA() == null) missing.add(inverter.fact("lineCurrentA"));
        return List.copyOf(missing);
    }

    private static List<Capacity> ofGrid(Installation installation) {
        OvercurrentDevice main = installation.supply().mainFuse();
        Double ratedA = main == null ? null : main.ratedCurrentA();
        double limitA = ratedA == null ? Double.POSITIVE_INFINITY : ratedA;
        List<Capacity> capacities = new ArrayList<>(3);
        for (Conductor line : installation.lines(ThingId.SUPPLY))
            capacities.add(new Capacity(line, List.of(line), limitA, List.of()));
        return List.copyOf(capacities);
    }

    private static List<Capacity> ofInverters(
            List<Inverter> inverters, Installation installation, double nominalVoltageV) {
        Set<Conductor> lines = new LinkedHashSet<>(3);
        for (Inverter inverter : inverters) lines.addAll(installation.lines(inverter.id()));
        List<Capacity> capacities = new ArrayList<>(4);
        for (Conductor line : lines) {
            List<Capacity.Part> parts = new ArrayList<>(1);
            for (Inverter inverter : inverters)
                if (inverter.lineCurrentA() != null
                        && installation.lines(inverter.id()).contains(line))
                    parts.add(new Capacity.Part(inverter, inverter.lineCurrentA()));
            capacities.add(Capacity.of(line, List.of(line), parts));
        }
        List<Capacity.Part> together = new ArrayList<>(1);
        for (Inverter inverter : inverters)
            if (inverter.ratedPowerVa() != null)
                together.add(new Capacity.Part(inverter, inverter.ratedPowerVa() / (lines.size() * nominalVoltageV)));
        if (lines.size() > 1 && together.size() == inverters.size())
            capacities.add(Capacity.of(null, List.copyOf(lines), together));
        return List.copyOf(capacities);
    }
}
