package tideover.engine.protection.selectivity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.installation.Path;
import tideover.engine.installation.View;
import tideover.engine.network.Upstream;
import tideover.engine.protection.Tables;
import tideover.engine.protection.TripCurve;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/**
 * A short circuit between lines and neutral behind one island source, whose current is limited: which devices open before
 * it stops, and where it stops first.
 *
 * @param currentA  current of the source into the fault, r.m.s. per line [A]
 * @param stopsS    when it has stopped [s]
 * @param alone     circuits whose device opens before the source stops, and alone
 * @param notAlone  circuits whose device opens in time, but so may one before it
 * @param stopping  circuits on which a fault stops the source: all it feeds goes dark
 * @param facts     facts this rests on
 * @param missing   facts without which it is not known where other circuits belong
 */
public record IslandShortCircuit(
        double currentA,
        double stopsS,
        List<ThingId> alone,
        List<ThingId> notAlone,
        List<ThingId> stopping,
        List<FactId> facts,
        List<FactId> missing) {
    public IslandShortCircuit {
        alone = List.copyOf(alone);
        notAlone = List.copyOf(notAlone);
        stopping = List.copyOf(stopping);
        facts = List.copyOf(facts);
        missing = List.copyOf(missing);
    }

    /** Facts of a source without which nothing can be said. */
    public static List<FactId> missing(Inverter inverter) {
        List<FactId> missing = new ArrayList<>(2);
        if (currentA(inverter) == null) missing.add(inverter.fact("faultCurrentA"));
        if (inverter.shutOffTimeS() == null) missing.add(inverter.fact("shutOffTimeS"));
        return missing;
    }

    /**
     * Works it out for a source of which {@link #missing} names nothing. Each line has this source alone; of several on
     * one line none stops later than it would alone.
     *
     * @throws IllegalArgumentException if a fact of the source is missing
     */
    public static IslandShortCircuit of(Installation installation, Tables tables, Inverter inverter) {
        Double currentA = currentA(inverter);
        Double stopsS = inverter.shutOffTimeS();
        if (currentA == null || stopsS == null)
            throw new IllegalArgumentException("%s lacks %s".formatted(inverter.id(), missing(inverter)));
        View view = installation.in(OperatingState.ISLAND_GRID_DEAD);
        List<ThingId> alone = new ArrayList<>();
        List<ThingId> notAlone = new ArrayList<>(0);
        List<ThingId> stopping = new ArrayList<>();
        List<FactId> unknown = new ArrayList<>(0);
        for (Circuit circuit : installation.circuits()) {
            Path way = findWay(view, inverter, circuit).orElse(null);
            if (way == null) continue;
            List<Upstream> devices = Upstream.along(installation, way);
            List<TripCurve> curves = new ArrayList<>(3);
            for (Upstream device : devices)
                tables.tripCurves()
                        .find(device.device())
                        .ifPresentOrElse(curves::add, () -> unknown.addAll(device.missingForCurve()));
            if (curves.size() < devices.size()) continue;
            double opensS = curves.isEmpty()
                    ? Double.POSITIVE_INFINITY
                    : curves.get(curves.size() - 1).latestS(currentA);
            if (opensS > stopsS) stopping.add(circuit.id());
            else if (curves.subList(0, curves.size() - 1).stream()
                    .allMatch(before -> before.earliestS(currentA) >= opensS)) alone.add(circuit.id());
            else notAlone.add(circuit.id());
        }
        List<FactId> facts = List.of(
                inverter.fact(inverter.faultCurrentA() == null ? "lineCurrentA" : "faultCurrentA"),
                inverter.fact("shutOffTimeS"));
        return new IslandShortCircuit(
                currentA,
                stopsS,
                alone,
                notAlone,
                stopping,
                facts,
                unknown.stream().distinct().toList());
    }

    /** The way of the first line of a circuit that the source feeds. */
    private static Optional<Path> findWay(View view, Inverter inverter, Circuit circuit) {
        for (Conductor line : view.liveLines(circuit))
            if (view.sourcesAt(circuit.id(), line).contains(inverter.id()))
                return view.findLinePath(inverter.id(), circuit.id(), line);
        return Optional.empty();
    }

    /** Current into a short circuit; where its maker states none, what it gives all the time [A]. */
    static @Nullable Double currentA(Inverter inverter) {
        return inverter.faultCurrentA() == null ? inverter.lineCurrentA() : inverter.faultCurrentA();
    }
}
