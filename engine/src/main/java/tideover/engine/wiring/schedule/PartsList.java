package tideover.engine.wiring.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.site.Battery;
import tideover.engine.site.Board;
import tideover.engine.site.ByPass;
import tideover.engine.site.Electrode;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Isolator;
import tideover.engine.site.Meter;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.PvArray;
import tideover.engine.site.ResidualDevice;
import tideover.engine.site.Site;
import tideover.engine.site.Status;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/**
 * What the job takes, from its data only; no makers.
 *
 * @param devices     new devices, in the order in which they are written
 * @param protections overcurrent and residual current devices that are new, alike ones together
 * @param measuring   fuses of measuring neutrals, by rated current
 * @param ferrules    by section, then length
 * @param cutting     cables and wires
 */
public record PartsList(
        List<Thing> devices,
        List<Protection> protections,
        List<MeasuringFuse> measuring,
        List<Ferrules> ferrules,
        CuttingList cutting) {

    /**
     * Protective devices that are alike. Where both are there, it is one device (RCBO).
     *
     * @param lines  lines it switches
     * @param things what they protect
     */
    public record Protection(
            @Nullable OvercurrentDevice overcurrent,
            @Nullable ResidualDevice residual,
            int lines,
            List<ThingId> things) {
        public Protection {
            things = List.copyOf(things);
        }
    }

    /**
     * Fuses of measuring neutrals that are alike.
     *
     * @param ratedCurrentA rated current [A]
     */
    public record MeasuringFuse(double ratedCurrentA, List<ThingId> meters) {
        public MeasuringFuse {
            meters = List.copyOf(meters);
        }
    }

    /** Ferrules of one size, if the conductors are stranded. */
    public record Ferrules(Ferrule size, int count) {}

    private static final List<Class<? extends Thing>> DEVICES = List.of(
            IslandingSwitch.class,
            NeutralEarthSwitch.class,
            ByPass.class,
            Meter.class,
            Inverter.class,
            Battery.class,
            PvArray.class,
            Board.class,
            Isolator.class,
            Electrode.class);

    private record Alike(
            @Nullable OvercurrentDevice overcurrent,
            @Nullable ResidualDevice residual,
            int lines) {}

    public PartsList {
        devices = List.copyOf(devices);
        protections = List.copyOf(protections);
        measuring = List.copyOf(measuring);
        ferrules = List.copyOf(ferrules);
    }

    /** Parts of what is new. */
    public static PartsList of(
            Installation installation, PowerSchedule power, ControlSchedule control, CuttingList cutting) {
        List<Thing> devices = installation.things().stream()
                .filter(thing -> installation.status(thing.id()) == Status.NEW)
                .filter(thing -> DEVICES.stream().anyMatch(type -> type.isInstance(thing)) && !isPartOfAnother(thing))
                .toList();
        return new PartsList(
                devices, protections(installation), measuring(installation), ferrules(power, control), cutting);
    }

    private static boolean isPartOfAnother(Thing thing) {
        return thing instanceof IslandingSwitch device && device.builtInto() != null
                || thing instanceof NeutralEarthSwitch link && link.builtInto() != null;
    }

    private static List<Protection> protections(Installation installation) {
        Set<ThingId> overcurrentPutIn = putIn(installation.site(), Fed::protection);
        Set<ThingId> residualPutIn = putIn(installation.site(), Fed::rcd);
        Map<Alike, List<ThingId>> things = new LinkedHashMap<>();
        for (Fed fed : installation.all(Fed.class)) {
            OvercurrentDevice overcurrent = overcurrentPutIn.contains(fed.id()) ? fed.protection() : null;
            ResidualDevice residual = residualPutIn.contains(fed.id()) ? fed.rcd() : null;
            int lines = installation.lines(fed.id()).size();
            boolean isOneDevice = overcurrent != null && residual != null && residual.ratedCurrentA() == null;
            if (isOneDevice) {
                add(things, new Alike(overcurrent, residual, lines), fed);
                continue;
            }
            if (overcurrent != null) add(things, new Alike(overcurrent, null, lines), fed);
            if (residual != null) add(things, new Alike(null, residual, lines), fed);
        }
        List<Protection> protections = new ArrayList<>();
        things.forEach((alike, of) ->
                protections.add(new Protection(alike.overcurrent(), alike.residual(), alike.lines(), of)));
        return protections;
    }

    private static void add(Map<Alike, List<ThingId>> things, Alike alike, Fed fed) {
        things.computeIfAbsent(alike, a -> new ArrayList<>()).add(fed.id());
    }

    /** Where plan or work put in such a device. */
    private static Set<ThingId> putIn(Site site, Function<Fed, @Nullable Object> device) {
        Set<ThingId> places = new HashSet<>(site.built().swapped());
        Stream.concat(site.plan().things().stream(), site.built().things().stream())
                .filter(stated -> stated instanceof Fed fed && device.apply(fed) != null)
                .forEach(stated -> places.add(stated.id()));
        return places;
    }

    private static List<MeasuringFuse> measuring(Installation installation) {
        Touched touched = new Touched(installation);
        Map<Double, List<ThingId>> meters = new TreeMap<>();
        for (Meter meter : installation.meters())
            if (meter.measuringNeutralFuseA() != null && touched.touchesMeasuring(meter))
                meters.computeIfAbsent(meter.measuringNeutralFuseA(), a -> new ArrayList<>())
                        .add(meter.id());
        List<MeasuringFuse> fuses = new ArrayList<>();
        meters.forEach((ratedCurrentA, of) -> fuses.add(new MeasuringFuse(ratedCurrentA, of)));
        return fuses;
    }

    private static List<Ferrules> ferrules(PowerSchedule power, ControlSchedule control) {
        Map<Ferrule, Integer> counts = new TreeMap<>(
                Comparator.comparingDouble(Ferrule::crossSectionMm2).thenComparingDouble(Ferrule::sleeveLengthM));
        for (PowerRow row : power.rows()) {
            if (row.ferruleFrom() != null) counts.merge(row.ferruleFrom(), 1, Integer::sum);
            if (row.ferruleTo() != null) counts.merge(row.ferruleTo(), 1, Integer::sum);
        }
        for (CoreRow row : control.rows()) if (row.ferrule() != null) counts.merge(row.ferrule(), 2, Integer::sum);
        List<Ferrules> ferrules = new ArrayList<>();
        counts.forEach((size, count) -> ferrules.add(new Ferrules(size, count)));
        return ferrules;
    }
}
