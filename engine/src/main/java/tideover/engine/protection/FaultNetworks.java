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
    private final Map<View, Map<ThingId, List<ThingId>>> dark = new HashMap<>();
    private final Impedances warm;
    private @Nullable Impedances cold;

    FaultNetworks(Installation installation, Tables tables, FaultAssumptions assumptions, Impedances warm) {
        this.installation = installation;
        this.tables = tables;
        this.assumptions = assumptions;
        this.warm = warm;
    }

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
                // Cold is cold for every insulation; the table's XLPE margin is taken back out.
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
                GridSource.weakest(
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

    /** The circuits that lose their voltage when a fault has ended. */
    List<ThingId> dark(View view, Clearing clearing) {
        if (clearing instanceof Clearing.ByDevice by)
            return dark.computeIfAbsent(view, v -> new HashMap<>())
                    .computeIfAbsent(by.device(), device -> behind(view, device));
        if (clearing instanceof Clearing.BySourceShutdown by)
            return dark.computeIfAbsent(view, v -> new HashMap<>())
                    .computeIfAbsent(by.source(), source -> fedBy(view, source));
        return List.of();
    }

    private List<ThingId> behind(View view, ThingId device) {
        List<ThingId> behind = new ArrayList<>();
        for (Circuit circuit : installation.circuits()) {
            boolean lies = device.equals(ThingId.SUPPLY)
                    || circuit.id().equals(device)
                    || installation.isBehind(circuit, device);
            if (lies && view.findSource(circuit).isPresent()) behind.add(circuit.id());
        }
        return List.copyOf(behind);
    }

    private List<ThingId> fedBy(View view, ThingId source) {
        List<ThingId> fed = new ArrayList<>();
        for (Circuit circuit : installation.circuits())
            if (view.findSource(circuit).filter(source::equals).isPresent()) fed.add(circuit.id());
        return List.copyOf(fed);
    }
}
