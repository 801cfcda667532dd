package tideover.engine.protection.selectivity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.installation.Path;
import tideover.engine.installation.View;
import tideover.engine.network.AdiabaticTable;
import tideover.engine.network.Upstream;
import tideover.engine.protection.Extreme;
import tideover.engine.protection.FaultCourse;
import tideover.engine.protection.FaultCourses;
import tideover.engine.protection.FaultKind;
import tideover.engine.protection.FaultStory;
import tideover.engine.protection.Tables;
import tideover.engine.site.Cable;
import tideover.engine.site.Circuit;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Fed;
import tideover.engine.site.Insulation;
import tideover.engine.site.Inverter;
import tideover.engine.site.Material;
import tideover.engine.site.OperatingState;
import tideover.engine.site.RcdDelay;
import tideover.engine.site.ResidualDevice;
import tideover.engine.site.ThingId;

/** Gathers what belongs on time–current sheets; computes and never judges. */
public final class TimeCurrentPaths {

    private final Installation installation;
    private final Tables tables;
    private final @Nullable FaultCourses faults;

    /** @param faults fault currents; nothing where the rule book does not say how to compute them */
    public TimeCurrentPaths(Installation installation, Tables tables, @Nullable FaultCourses faults) {
        this.installation = installation;
        this.tables = tables;
        this.faults = faults;
    }

    /** The sheet of a circuit; nothing where the grid does not reach it or no overcurrent device lies before it. */
    public Optional<TimeCurrentPath> find(Circuit circuit) {
        View view = installation.in(OperatingState.CONNECTED);
        if (view.liveLines(circuit).isEmpty()) return Optional.empty();
        Path way = view.findLinePath(
                        ThingId.SUPPLY, circuit.id(), view.liveLines(circuit).get(0))
                .orElse(null);
        if (way == null) return Optional.empty();
        List<TimeCurrentPath.Device> devices = new ArrayList<>();
        for (Upstream place : Upstream.along(installation, way))
            devices.add(new TimeCurrentPath.Device(
                    place, tables.tripCurves().find(place.device()).orElse(null)));
        if (devices.isEmpty()) return Optional.empty();
        Inverter source = islandSource(circuit).orElse(null);
        return Optional.of(new TimeCurrentPath(
                circuit.id(),
                devices,
                residual(way),
                largestA(circuit),
                smallestA(circuit),
                source == null ? null : source.id(),
                source == null ? null : IslandShortCircuit.currentA(source),
                source == null ? null : source.shutOffTimeS(),
                withstandA2s(circuit.cable())));
    }

    /**
     * One sheet for each kind of path of the circuits that stay on, those first whose device may take longest on the
     * smallest fault current.
     *
     * @param most how many
     */
    public List<TimeCurrentPath> ofStayingCircuits(int most) {
        List<TimeCurrentPath> all = new ArrayList<>();
        for (Circuit circuit : installation.circuits())
            if (installation.staysOn(circuit)) find(circuit).ifPresent(all::add);
        all.sort(Comparator.comparingDouble(TimeCurrentPaths::latestS).reversed());
        List<TimeCurrentPath> distinct = new ArrayList<>();
        for (TimeCurrentPath path : all)
            if (distinct.size() < most && distinct.stream().noneMatch(path::looksLike)) distinct.add(path);
        return distinct;
    }

    private List<TimeCurrentPath.Residual> residual(Path way) {
        List<TimeCurrentPath.Residual> residual = new ArrayList<>(2);
        for (Fed holder : way.rcds()) {
            ResidualDevice rcd = holder.rcd();
            if (rcd == null) continue;
            RcdDelay delay = rcd.delay() == null ? RcdDelay.SELECTIVE : rcd.delay();
            residual.add(new TimeCurrentPath.Residual(
                    holder.id(),
                    rcd.ratedResidualCurrentA(),
                    tables.rcdTimes().latestS(delay, 1),
                    tables.rcdTimes().latestS(delay, 5)));
        }
        return residual;
    }

    private static double latestS(TimeCurrentPath path) {
        Double smallestA = path.smallestA();
        TimeCurrentPath.Device own = path.devices().get(path.devices().size() - 1);
        return smallestA == null || own.curve() == null
                ? Double.POSITIVE_INFINITY
                : own.curve().latestS(smallestA);
    }

    private Optional<Inverter> islandSource(Circuit circuit) {
        if (!installation.states().contains(OperatingState.ISLAND_GRID_DEAD)) return Optional.empty();
        return installation
                .in(OperatingState.ISLAND_GRID_DEAD)
                .findSource(circuit)
                .flatMap(installation::findFed)
                .map(Inverter.class::cast);
    }

    private @Nullable Double largestA(Circuit circuit) {
        ThingId from = circuit.fedFrom();
        if (faults == null || from == null) return installation.supply().prospectiveCurrentA();
        var largestA = faults.findLargestA(from, OperatingState.CONNECTED);
        return largestA.isPresent()
                ? (Double) largestA.getAsDouble()
                : installation.supply().prospectiveCurrentA();
    }

    /** In TT a fault to earth is the matter of an RCD; elsewhere it counts as well as one to neutral. */
    private @Nullable Double smallestA(Circuit circuit) {
        if (faults == null) return null;
        double smallestA = Double.POSITIVE_INFINITY;
        for (FaultCourse course :
                faults.courses(FaultKind.LINE_TO_NEUTRAL, circuit, OperatingState.CONNECTED, Extreme.SMALLEST, 0))
            if (course.currentA() > 0) smallestA = Math.min(smallestA, course.currentA());
        for (FaultStory story : faults.lineToEarth(circuit, OperatingState.CONNECTED))
            if (story.system() != EarthingSystem.TT && story.currentA() > 0)
                smallestA = Math.min(smallestA, story.currentA());
        return Double.isFinite(smallestA) ? smallestA : null;
    }

    private @Nullable Double withstandA2s(@Nullable Cable cable) {
        if (cable == null || cable.crossSectionMm2() == null) return null;
        double k = tables.adiabatic()
                .k(
                        cable.material() == null ? Material.COPPER : cable.material(),
                        cable.insulation() == null ? Insulation.PVC : cable.insulation(),
                        AdiabaticTable.Use.CORE);
        double kS = k * cable.crossSectionMm2();
        return kS * kS;
    }
}
