package tideover.engine.protection;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.installation.Path;
import tideover.engine.installation.View;
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

    /**
     * The quickest end of a fault.
     *
     * @param there    way of the line from the source to the fault
     * @param back     way back to the source's neutral, if there is one
     * @param currentA fault current [A]
     * @param inverter the source, nothing for the grid
     * @param limited  whether the source gives all it can
     * @param acting   is given the things whose RCDs see the fault
     * @param facts    is given the facts the end rests on
     * @param missing  is given the facts that might give a quicker one
     */
    Clearing clearing(
            View view,
            Path there,
            @Nullable Path back,
            double currentA,
            @Nullable Inverter inverter,
            boolean limited,
            List<ThingId> acting,
            List<FactId> facts,
            List<FactId> missing,
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
                            currentA,
                            missing,
                            trace));
        for (Edge edge : there.edges()) {
            if (edge.part() != Edge.Part.FEED || !(edge.thing() instanceof Fed fed)) continue;
            ResidualDevice rcd = fed.rcd();
            if (rcd != null && back != null && !view.isByPassedByNeutral(fed.id(), there.source())) {
                acting.add(fed.id());
                best = quicker(best, residual(fed, rcd, currentA, missing, trace));
            }
            if (fed.protection() != null)
                best = quicker(
                        best,
                        overcurrent(
                                new Upstream(fed.id(), Slot.PROTECTION, fed.protection()), currentA, missing, trace));
        }
        if (inverter != null && limited && back != null)
            best = quicker(best, shutdown(inverter, facts, missing, trace));
        if (best instanceof Clearing.ByDevice by) facts.addAll(facts(by));
        return best instanceof Clearing.Never && !missing.isEmpty() ? new Clearing.Unknown(missing) : best;
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

    private Clearing residual(Fed fed, ResidualDevice rcd, double currentA, List<FactId> missing, Trace trace) {
        if (rcd.ratedResidualCurrentA() == null) {
            missing.add(fed.fact("rcd.ratedResidualCurrentA"));
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
        return latestS == Double.POSITIVE_INFINITY
                ? new Clearing.Never()
                : new Clearing.ByDevice(
                        fed.id(),
                        Clearing.DeviceKind.RESIDUAL_CURRENT,
                        tables.rcdTimes().earliestS(delay, multiple),
                        latestS);
    }

    private Clearing overcurrent(Upstream holder, double currentA, List<FactId> missing, Trace trace) {
        TripCurve curve = findCurve(holder.device()).orElse(null);
        if (curve == null) {
            missing.add(holder.device().ratedCurrentA() == null ? holder.ratedCurrent() : holder.curve());
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
        return latestS == Double.POSITIVE_INFINITY
                ? new Clearing.Never()
                : new Clearing.ByDevice(
                        holder.holder(), Clearing.DeviceKind.OVERCURRENT, curve.earliestS(currentA), latestS);
    }

    private Optional<TripCurve> findCurve(OvercurrentDevice device) {
        return curves.computeIfAbsent(device, tables.tripCurves()::find);
    }

    private Clearing shutdown(Inverter inverter, List<FactId> facts, List<FactId> missing, Trace trace) {
        facts.add(inverter.fact("shutOffTimeS"));
        facts.add(inverter.fact("shutOffVoltageV"));
        if (inverter.shutOffTimeS() == null) missing.add(inverter.fact("shutOffTimeS"));
        if (inverter.shutOffVoltageV() == null) missing.add(inverter.fact("shutOffVoltageV"));
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
