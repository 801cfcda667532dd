package tideover.engine.installation.bus;

import static tideover.engine.rules.PhraseArg.amount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Force;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.BusPort;
import tideover.engine.site.FactId;

/** Resistors in one place hold the idle line above the threshold of the receivers. */
final class BiasCheck implements Check<BusStudies> {

    private static final String LIMIT = "bus.bias";
    private static final String LEAST = "bus.leastIdleV";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(BusStudies bus, Judging judging) {
        Optional<Limit> limit = judging.limit(LEAST);
        for (BusLine line : bus.lines()) {
            if (line.ports().size() < 2) continue;
            Judging.Draft draft = judging.at(line.head().id());
            if (limit.isEmpty()) draft.openForLimit(LEAST);
            else judge(line, limit.get().requireNumber(), draft.by(limit.get()), judging);
        }
    }

    private static void judge(BusLine line, double leastV, Judging.Draft draft, Judging judging) {
        List<BusPort> biased =
                line.ports().stream().filter(port -> port.biasOhm() != null).toList();
        for (BusPort port : line.ports()) draft.on(port.fact("biasOhm"));
        if (biased.isEmpty() && !line.gaps().isEmpty()) {
            draft.openFor(line.gaps());
            return;
        }
        if (biased.isEmpty()) {
            // Receivers whose threshold lies below zero do without.
            draft.force(Force.ADVISED).notMet("bus.bias.none", Devices.of(line.head()));
            return;
        }
        if (biased.size() > 1) {
            draft.notMet("bus.bias.several", Devices.of(biased));
            return;
        }
        BusPort port = biased.get(0);
        List<FactId> missing = new ArrayList<>(0);
        if (port.biasVoltageV() == null) missing.add(port.fact("biasVoltageV"));
        for (BusPort each : line.ports()) if (each.unitLoadRatio() == null) missing.add(each.fact("unitLoadRatio"));
        draft.on(port.fact("biasVoltageV"));
        if (!missing.isEmpty() || port.biasVoltageV() == null || port.biasOhm() == null) {
            draft.openFor(missing);
            return;
        }
        LineLoad load = line.load();
        draft.measure(load.idleV(), leastV, Unit.V);
        judging.trace()
                .line(
                        "calculation.bus.idle",
                        amount(port.biasVoltageV(), Unit.V),
                        amount(port.biasOhm(), Unit.OHM),
                        amount(load.loadOhm(), Unit.OHM),
                        amount(load.idleV(), Unit.V));
        if (load.idleV() < leastV)
            draft.notMet("bus.bias.below", Devices.of(port), amount(load.idleV(), Unit.V), amount(leastV, Unit.V));
        else draft.met("bus.bias.met", Devices.of(port), amount(load.idleV(), Unit.V), amount(leastV, Unit.V));
    }
}
