package tideover.engine.protection.shortcircuit;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.network.Upstream;
import tideover.engine.protection.Extreme;
import tideover.engine.protection.FaultCourse;
import tideover.engine.protection.FaultCourses;
import tideover.engine.protection.FaultKind;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/**
 * A short circuit in a cable while islanded, where the device that protects the cable when connected does not lie between it
 * and the source.
 *
 * @param fed     thing whose supply cable it is
 * @param sources island sources that drive it; of an inverter's own cable only itself, since others reach it over the
 *                device it has when connected
 * @param devices devices between them and the cable, from the source on
 */
record IslandFault(Fed fed, List<Inverter> sources, List<Upstream> devices) {

    private static final OperatingState ISLAND = OperatingState.ISLAND_GRID_DEAD;

    IslandFault {
        sources = List.copyOf(sources);
        devices = List.copyOf(devices);
    }

    /** The fault at the end of a cable; nothing where the cable is dead, or has the device it has when connected */
    static Optional<IslandFault> find(Installation installation, Fed fed) {
        View view = installation.in(ISLAND);
        List<Conductor> live = view.liveLines(fed);
        ThingId from = fed.fedFrom();
        boolean isThere = from != null
                && (from.equals(ThingId.SUPPLY) || installation.findFed(from).isPresent());
        if (live.isEmpty() || from == null || !isThere) return Optional.empty();
        Conductor line = live.get(0);
        if (view.sourcesAt(from, line).isEmpty()) return Optional.empty();
        if (fed instanceof Inverter inverter && view.sources().contains(fed.id()))
            return Optional.of(new IslandFault(fed, List.of(inverter), List.of()));
        List<ThingId> driving = view.sourcesAt(fed.id(), line);
        List<Upstream> devices = Upstream.along(
                installation, view.findLinePath(driving.get(0), fed.id(), line).orElseThrow());
        ThingId whenConnected =
                Upstream.find(installation, fed.id()).map(Upstream::holder).orElse(null);
        if (devices.stream().anyMatch(device -> device.holder().equals(whenConnected))) return Optional.empty();
        List<Inverter> sources = installation.formingInverters().stream()
                .filter(inverter -> driving.contains(inverter.id()))
                .toList();
        return Optional.of(new IslandFault(fed, sources, devices));
    }

    /** The first of the sources. */
    ThingId source() {
        return sources.get(0).id();
    }

    /** Facts that tell what the sources give: what they give all the time would be too little to judge by. */
    List<FactId> facts() {
        return sources.stream().map(inverter -> inverter.fact("faultCurrentA")).toList();
    }

    /** Those of them that are not known. */
    List<FactId> missing() {
        return sources.stream()
                .filter(inverter -> inverter.faultCurrentA() == null)
                .map(inverter -> inverter.fact("faultCurrentA"))
                .toList();
    }

    /** What the sources give on a line at most [A]; nothing where one of them does not say. */
    @Nullable
    Double largestA() {
        double sumA = 0;
        for (Inverter inverter : sources) {
            if (inverter.faultCurrentA() == null) return null;
            sumA += inverter.faultCurrentA();
        }
        return sumA;
    }

    /**
     * When the fault has ended.
     *
     * @param endS    by a device, or the source has shut down [s]; +infinity where nothing ends it for certain
     * @param missing facts that might make it sooner
     */
    record End(double endS, List<FactId> missing) {}

    /** How the fault ends: in an inverter's own cable no device sees it. */
    End end(FaultCourses faults) {
        if (fed instanceof Inverter inverter && sources.contains(inverter))
            return inverter.shutOffTimeS() == null
                    ? new End(Double.POSITIVE_INFINITY, List.of(inverter.fact("shutOffTimeS")))
                    : new End(inverter.shutOffTimeS(), List.of());
        End worst = new End(0, List.of());
        for (FaultKind kind : List.of(FaultKind.LINE_TO_NEUTRAL, FaultKind.LINE_TO_LINE))
            for (FaultCourse course : faults.courses(kind, fed, ISLAND, Extreme.SMALLEST, 0))
                if (course.clearing().latestS() > worst.endS)
                    worst = new End(course.clearing().latestS(), course.missing());
        return worst;
    }

    /** The circuits that go dark when the sources stop. */
    List<Circuit> dark(Installation installation) {
        View view = installation.in(ISLAND);
        return installation.circuits().stream()
                .filter(circuit -> view.findSource(circuit)
                        .filter(source -> sources.stream()
                                .anyMatch(inverter -> inverter.id().equals(source)))
                        .isPresent())
                .toList();
    }
}
