package tideover.engine.protection;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.installation.Path;
import tideover.engine.installation.View;
import tideover.engine.network.Impedances;
import tideover.engine.network.flow.FaultFlow;
import tideover.engine.network.flow.FaultNetwork;
import tideover.engine.network.flow.Settled;
import tideover.engine.network.house.GridSource;
import tideover.engine.network.house.HouseNetwork;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.Supply;
import tideover.engine.site.ThingId;

/** The networks faults are computed in, each made once: by position of the contacts, live sources, and extreme. */
final class FaultNetworks {

    private static final double NOMINAL_VOLTAGE_V = 230;

    private final Installation installation;
    private final Tables tables;
    private final FaultAssumptions assumptions;
    private final Map<Extreme, Map<List<ThingId>, List<Ready>>> known = new EnumMap<>(Extreme.class);
    private final Map<View, Map<Opened, List<ThingId>>> dark = new HashMap<>();
    private final Impedances warm;
    private @Nullable Impedances cold;

    FaultNetworks(Installation installation, Tables tables, FaultAssumptions assumptions, Impedances warm) {
        this.installation = installation;
        this.tables = tables;
        this.assumptions = assumptions;
        this.warm = warm;
    }

    /** A device that has opened on the way of a source, or the source itself that has stopped. */
    private record Opened(ThingId source, ThingId device) {}

    /** A network ready for faults, with the branches every story asks for. */
    static final class Ready {
        private final View view;
        private final HouseNetwork house;
        private final FaultNetwork faults;
        private final int[] links;
        private final int[] electrodes;

        Ready(Installation installation, View view, HouseNetwork house) {
            this.view = view;
            this.house = house;
            faults = house.network().faults();
            links = installation.edges().stream()
                    .filter(edge -> edge.part().isNeutralToEarth())
                    .mapToInt(house::branch)
                    .filter(branch -> branch >= 0)
                    .toArray();
            electrodes = installation.edges().stream()
                    .filter(edge -> edge.part() == Edge.Part.ELECTRODE)
                    .mapToInt(house::branch)
                    .filter(branch -> branch >= 0)
                    .toArray();
        }

        HouseNetwork house() {
            return house;
        }

        FaultNetwork faults() {
            return faults;
        }

        /** Largest current in a connection of neutral and earth [A]. */
        double linkA(FaultFlow flow) {
            double largestA = 0;
            for (int branch : links)
                largestA = Math.max(largestA, flow.currentA(branch).magnitude());
            return Settled.of(largestA);
        }

        /** Sum of what flows through the house's electrodes [A]. */
        double earthA(FaultFlow flow) {
            double sumA = 0;
            for (int branch : electrodes) sumA += flow.currentA(branch).magnitude();
            return Settled.of(sumA);
        }
    }

    Ready ready(View view, List<ThingId> sources, Extreme extreme) {
        List<Ready> alike =
                known.computeIfAbsent(extreme, e -> new HashMap<>()).computeIfAbsent(sources, s -> new ArrayList<>(2));
        for (Ready ready : alike) if (ready.view.hasContactsOf(view)) return ready;
        HouseNetwork house =
                new HouseNetwork(installation, view, impedances(extreme), grid(extreme), sources, List.of());
        Ready ready = new Ready(installation, view, house);
        alike.add(ready);
        return ready;
    }

    private Impedances impedances(Extreme extreme) {
        return switch (extreme) {
            case SMALLEST -> warm;
            case LARGEST -> {
                if (cold == null) cold = Impedances.cold(installation, tables.conductors(), assumptions.coldDegC());
                yield cold;
            }
        };
    }

    private GridSource grid(Extreme extreme) {
        Supply supply = installation.supply();
        double nominalV = supply.nominalVoltageV() == null ? NOMINAL_VOLTAGE_V : supply.nominalVoltageV();
        Double loopOhm = supply.loopImpedanceOhm();
        return switch (extreme) {
            case SMALLEST ->
                GridSource.behindLoop(
                        supply,
                        nominalV * assumptions.voltageFactorRatio(),
                        loopOhm == null ? Impedances.UNMEASURED_NETWORK_OHM : loopOhm);
            case LARGEST -> {
                Double prospectiveA = supply.prospectiveCurrentA();
                double largestV = nominalV * assumptions.largestVoltageFactorRatio();
                yield prospectiveA != null
                        ? GridSource.strongest(largestV, prospectiveA)
                        : GridSource.usual(supply, largestV);
            }
        };
    }

    /** Facts without which the impedance of a way is not known. */
    void addMissing(Path way, Extreme extreme, List<FactId> missing) {
        Impedances impedances = impedances(extreme);
        for (Edge edge : way.edges())
            for (FactId fact : impedances.missing(edge)) if (!missing.contains(fact)) missing.add(fact);
        if (!way.source().equals(ThingId.SUPPLY)) return;
        Supply supply = installation.supply();
        FactId grid = extreme == Extreme.SMALLEST
                ? supply.loopImpedanceOhm() == null ? supply.fact("loopImpedanceOhm") : null
                : supply.prospectiveCurrentA() == null ? supply.fact("prospectiveCurrentA") : null;
        if (grid != null && !missing.contains(grid)) missing.add(grid);
    }

    /** What inverters on the grid add to a fault at most [A] (IEC 60909-0:2016, 6.10: full-size converters as current sources). */
    double addedByInvertersA(View view) {
        double sumA = 0;
        for (Inverter inverter : installation.inverters())
            if (view.findSource(inverter).filter(ThingId.SUPPLY::equals).isPresent())
                sumA += PathFaults.limitA(inverter);
        return sumA;
    }

    /** The circuits that lose a source's voltage when a fault has ended: those it reached over what opened. */
    List<ThingId> dark(View view, ThingId source, Clearing clearing) {
        if (clearing instanceof Clearing.ByDevice by)
            return dark.computeIfAbsent(view, v -> new HashMap<>())
                    .computeIfAbsent(new Opened(source, by.device()), opened -> over(view, source, by.device()));
        if (clearing instanceof Clearing.BySourceShutdown by)
            return dark.computeIfAbsent(view, v -> new HashMap<>())
                    .computeIfAbsent(new Opened(by.source(), by.source()), opened -> fedBy(view, by.source()));
        return List.of();
    }

    private List<ThingId> over(View view, ThingId source, ThingId device) {
        // The main fuse stands before all that the grid feeds.
        if (device.equals(ThingId.SUPPLY)) return fedBy(view, source);
        List<ThingId> over = new ArrayList<>();
        for (Circuit circuit : installation.circuits())
            for (Conductor line : view.liveLines(circuit))
                if (!over.contains(circuit.id())
                        && view.findLinePath(source, circuit.id(), line)
                                .filter(path -> path.passes(device))
                                .isPresent()) over.add(circuit.id());
        return List.copyOf(over);
    }

    private List<ThingId> fedBy(View view, ThingId source) {
        List<ThingId> fed = new ArrayList<>();
        for (Circuit circuit : installation.circuits())
            if (view.findSource(circuit).filter(source::equals).isPresent()) fed.add(circuit.id());
        return List.copyOf(fed);
    }
}
