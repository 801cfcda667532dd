package tideover.engine.network;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.names;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.FactId;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PerLine;
import tideover.engine.site.ThingId;

/**
 * What the house draws through the islanding switch is above neither its rated current nor its back-up fuse. If it is,
 * three ways out: a larger switch, circuits to the grid side, or both.
 */
final class SwitchLoadCheck implements Check<NetworkStudies> {

    /** Rated currents of switches and fuses as the trade stocks them [A] (common practice). */
    private static final double[] SIZES_A = {25, 35, 63, 80, 100, 125};

    @Override
    public String id() {
        return "switch.load";
    }

    @Override
    public void judge(NetworkStudies studies, Judging judging) {
        Installation installation = studies.installation();
        Optional<Limit> limit = judging.limit("switch.load");
        for (IslandingSwitch device : installation.islandingSwitches()) {
            Judging.Draft draft = judging.at(device.id(), OperatingState.CONNECTED);
            if (limit.isEmpty() || studies.demand() == null) draft.openForLimit("switch.load");
            else judge(studies.demand(), installation, device, draft.by(limit.get()), judging);
        }
    }

    private static void judge(
            Demand demand, Installation installation, IslandingSwitch device, Judging.Draft draft, Judging judging) {
        Optional<Upstream> before = Upstream.find(installation, device.id());
        List<FactId> missing = new ArrayList<>(0);
        draft.on(device.fact("ratedCurrentA"));
        if (device.ratedCurrentA() == null) missing.add(device.fact("ratedCurrentA"));
        double allowedA = device.ratedCurrentA() == null ? Double.POSITIVE_INFINITY : device.ratedCurrentA();
        if (before.isPresent()) {
            draft.on(before.get().ratedCurrent());
            Double ratedA = before.get().device().ratedCurrentA();
            if (ratedA == null) missing.add(before.get().ratedCurrent());
            else allowedA = Math.min(allowedA, ratedA);
        }
        List<Circuit> circuits = demand.circuitsBehind(device.id());
        for (Circuit circuit : circuits) {
            draft.on(demand.facts(circuit));
            missing.addAll(demand.missing(circuit));
        }
        PerLine drawnA = demand.togetherA(circuits);
        double worstA = drawnA.largest();
        if (judging.trace().isOn()) explain(demand, circuits, drawnA, allowedA, judging);
        draft.measure(worstA, allowedA, Unit.A);
        if (worstA > allowedA) waysOut(demand, device, circuits, worstA, allowedA, draft);
        else if (!missing.isEmpty()) draft.openFor(missing);
        else draft.met("switch.load.met", name(device.id()), amount(worstA, Unit.A), amount(allowedA, Unit.A));
    }

    private static void explain(
            Demand demand, List<Circuit> circuits, PerLine drawnA, double allowedA, Judging judging) {
        for (Circuit circuit : circuits)
            demand.findCurrentA(circuit)
                    .ifPresent(currentA -> judging.trace()
                            .line(
                                    "calculation.demand.circuit",
                                    name(circuit.id()),
                                    amount(currentA.largest(), Unit.A)));
        judging.trace()
                .line(
                        "calculation.demand.together",
                        amount(drawnA.l1(), Unit.A),
                        amount(drawnA.l2(), Unit.A),
                        amount(drawnA.l3(), Unit.A),
                        amount(allowedA, Unit.A));
    }

    private static void waysOut(
            Demand demand,
            IslandingSwitch device,
            List<Circuit> circuits,
            double worstA,
            double allowedA,
            Judging.Draft draft) {
        double largerA = nextSize(worstA);
        double nextA = nextSize(allowedA + 0.5);
        List<ThingId> moved = HoldBack.fewest(demand, circuits, PerLine.of(allowedA));
        List<ThingId> movedWithNext = HoldBack.fewest(demand, circuits, PerLine.of(nextA));
        List<PhraseArg> said = new ArrayList<>(
                List.of(name(device.id()), amount(worstA, Unit.A), amount(allowedA, Unit.A), amount(largerA, Unit.A)));
        String ways = "one";
        if (!moved.isEmpty()) {
            said.add(names(moved));
            ways = "two";
            if (nextA < largerA && !movedWithNext.isEmpty()) {
                said.add(amount(nextA, Unit.A));
                said.add(names(movedWithNext));
                ways = "three";
            }
        }
        draft.notMet("switch.load.above." + ways, said.toArray(PhraseArg[]::new));
    }

    private static double nextSize(double currentA) {
        for (double size : SIZES_A) if (size >= currentA) return size;
        return Math.ceil(currentA);
    }
}
