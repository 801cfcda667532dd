package tideover.engine.protection;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.installation.Path;
import tideover.engine.network.Upstream;
import tideover.engine.network.Upstream.Slot;
import tideover.engine.rules.Trace;
import tideover.engine.rules.Unit;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.RcdDelay;
import tideover.engine.site.ResidualDevice;
import tideover.engine.site.ThingId;

/** What ends a fault current of known size: the devices on its way, or the source itself. */
final class Clearings {

    private final Installation installation;
    private final Tables tables;
    private final double safeVoltageV;
    private final IdentityHashMap<OvercurrentDevice, Optional<TripCurve>> curves = new IdentityHashMap<>();

    /** @param safeVoltageV voltage a source that has shut down may leave, line to earth [V] */
    Clearings(Installation installation, Tables tables, double safeVoltageV) {
        this.installation = installation;
        this.tables = tables;
        this.safeVoltageV = safeVoltageV;
    }

    /** What flows through the devices on the way during a fault. */
    interface Currents {

        /** Through the overcurrent device of a thing, or the main fuse for the supply [A]. */
        double throughA(ThingId holder);

        /** What the residual current device of a thing sees [A]; 0 where it is blind. */
        double residualA(Fed holder);
    }

    /** What is noted while the end of a fault is sought. */
    static final class Notes {
        /** Things whose RCDs see the fault. */
        final List<ThingId> acting = new ArrayList<>(2);
        /** Facts the end rests on. */
        final List<FactId> facts = new ArrayList<>();
        /** Facts that might give a quicker end. */
        final List<FactId> missing = new ArrayList<>(0);
        /** All devices on the way. */
        final List<DeviceBand> bands = new ArrayList<>(4);
    }

    /**
     * The quickest end of a fault.
     *
     * @param there    way of the line from the source to the fault
     * @param currents through the devices on it
     * @param inverter the source, nothing for the grid
     * @param limited  the inverter that gives all it can and will shut down, if one does
     */
    Clearing clearing(
            Path there,
            Currents currents,
            @Nullable Inverter inverter,
            @Nullable Inverter limited,
            Notes notes,
            Trace trace) {
        Clearing best = new Clearing.Never();
        if (inverter == null && installation.supply().mainFuse() != null)
            best = quicker(
                    best,
                    overcurrent(
                            new Upstream(
                                    ThingId.SUPPLY,
                                    Slot.MAIN_FUSE,
                                    installation.supply().mainFuse()),
                            currents.throughA(ThingId.SUPPLY),
                            notes,
                            trace));
        for (Edge edge : there.edges()) {
            if (edge.part() != Edge.Part.FEED || !(edge.thing() instanceof Fed fed)) continue;
            ResidualDevice rcd = fed.rcd();
            double residualA = rcd == null ? 0 : currents.residualA(fed);
            if (rcd != null && residualA > 0) {
                notes.acting.add(fed.id());
                best = quicker(best, residual(fed, rcd, residualA, notes, trace));
            }
            if (fed.protection() != null)
                best = quicker(
                        best,
                        overcurrent(
                                new Upstream(fed.id(), Slot.PROTECTION, fed.protection()),
                                currents.throughA(fed.id()),
                                notes,
                                trace));
        }
        if (limited != null) best = quicker(best, shutdown(limited, notes, trace));
        if (best instanceof Clearing.ByDevice by) notes.facts.addAll(facts(by));
        return best instanceof Clearing.Never && !notes.missing.isEmpty() ? new Clearing.Unknown(notes.missing) : best;
    }

    /** Of two that are equally quick the one nearer to the fault. */
    private static Clearing quicker(Clearing a, Clearing b) {
        return b.latestS() <= a.latestS() ? b : a;
    }

    /** What is known of the device that ends the fault; others may be otherwise without harm. */
    private List<FactId> facts(Clearing.ByDevice by) {
        Fed fed = installation.findFed(by.device()).orElse(null);
        if (by.kind() == Clearing.DeviceKind.RESIDUAL_CURRENT)
            return List.of(new FactId(by.device(), "rcd.ratedResidualCurrentA"), new FactId(by.device(), "rcd.delay"));
        OvercurrentDevice device = fed == null ? installation.supply().mainFuse() : fed.protection();
        return device == null
                ? List.of()
                : new Upstream(by.device(), fed == null ? Slot.MAIN_FUSE : Slot.PROTECTION, device).facts();
    }

    private Clearing residual(Fed fed, ResidualDevice rcd, double currentA, Notes notes, Trace trace) {
        if (rcd.ratedResidualCurrentA() == null) {
            notes.missing.add(fed.fact("rcd.ratedResidualCurrentA"));
            return new Clearing.Never();
        }
        RcdDelay delay = rcd.delay() == null ? RcdDelay.SELECTIVE : rcd.delay();
        double multiple = currentA / rcd.ratedResidualCurrentA();
        double latestS = tables.rcdTimes().latestS(delay, multiple);
        if (trace.isOn())
            trace.line(
                    "calculation.fault.residual",
                    name(fed.id()),
                    amount(rcd.ratedResidualCurrentA(), Unit.RESIDUAL_A),
                    amount(multiple, Unit.RATIO),
                    amount(latestS, Unit.S));
        return noted(
                new DeviceBand(
                        fed.id(),
                        Clearing.DeviceKind.RESIDUAL_CURRENT,
                        currentA,
                        tables.rcdTimes().earliestS(delay, multiple),
                        latestS),
                notes);
    }

    private Clearing overcurrent(Upstream holder, double currentA, Notes notes, Trace trace) {
        TripCurve curve = findCurve(holder.device()).orElse(null);
        if (curve == null) {
            notes.missing.add(holder.device().ratedCurrentA() == null ? holder.ratedCurrent() : holder.curve());
            return new Clearing.Never();
        }
        double latestS = curve.latestS(currentA);
        if (trace.isOn())
            trace.line(
                    "calculation.fault.overcurrent",
                    name(holder.holder()),
                    amount(curve.ratedCurrentA(), Unit.A),
                    amount(currentA, Unit.A),
                    amount(latestS, Unit.S));
        return noted(
                new DeviceBand(
                        holder.holder(), Clearing.DeviceKind.OVERCURRENT, currentA, curve.earliestS(currentA), latestS),
                notes);
    }

    private static Clearing noted(DeviceBand band, Notes notes) {
        notes.bands.add(band);
        return band.latestS() == Double.POSITIVE_INFINITY
                ? new Clearing.Never()
                : new Clearing.ByDevice(band.device(), band.kind(), band.earliestS(), band.latestS());
    }

    private Optional<TripCurve> findCurve(OvercurrentDevice device) {
        return curves.computeIfAbsent(device, tables.tripCurves()::find);
    }

    private Clearing shutdown(Inverter inverter, Notes notes, Trace trace) {
        notes.facts.add(inverter.fact("shutOffTimeS"));
        notes.facts.add(inverter.fact("shutOffVoltageV"));
        if (inverter.shutOffTimeS() == null) notes.missing.add(inverter.fact("shutOffTimeS"));
        if (inverter.shutOffVoltageV() == null) notes.missing.add(inverter.fact("shutOffVoltageV"));
        if (inverter.shutOffTimeS() == null || inverter.shutOffVoltageV() == null) return new Clearing.Never();
        trace.line(
                "calculation.fault.shutdown",
                name(inverter.id()),
                amount(inverter.shutOffTimeS(), Unit.S),
                amount(inverter.shutOffVoltageV(), Unit.V));
        return inverter.shutOffVoltageV() <= safeVoltageV
                ? new Clearing.BySourceShutdown(inverter.id(), inverter.shutOffTimeS(), inverter.shutOffVoltageV())
                : new Clearing.Never();
    }
}
