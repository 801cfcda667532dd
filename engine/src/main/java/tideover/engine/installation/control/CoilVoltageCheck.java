package tideover.engine.installation.control;

import static tideover.engine.rules.PhraseArg.amount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.ControlPort;
import tideover.engine.site.FactId;
import tideover.engine.site.PortKind;

/** At the end of its wires a coil or input still has the voltage at which it surely is on. */
final class CoilVoltageCheck implements Check<ControlWiring> {

    private static final String LIMIT = "control.coilVoltage";
    private static final String SUPPLY = "control.supplyVoltageRatio";
    private static final String COPPER = "control.copperOhmPerKm";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(ControlWiring wiring, Judging judging) {
        for (ControlPort port : wiring.net().controlPorts()) {
            // An input with nothing stated is served by any voltage of its own device; a coil is not.
            boolean judged =
                    port.kind() == PortKind.COIL || port.kind() == PortKind.INPUT && port.leastVoltageV() != null;
            Drive drive = wiring.findDrive(port).orElse(null);
            if (judged && drive != null && !drive.supply().id().equals(port.id())) judge(wiring, drive, judging);
        }
    }

    private static void judge(ControlWiring wiring, Drive drive, Judging judging) {
        ControlPort port = drive.port();
        Judging.Draft draft = judging.at(port.id());
        Optional<Limit> limit = judging.limit(LIMIT);
        Optional<Limit> ratio = judging.limit(SUPPLY);
        Optional<Limit> copper = judging.limit(COPPER);
        if (limit.isEmpty() || ratio.isEmpty() || copper.isEmpty()) {
            draft.openForLimit(LIMIT);
            return;
        }
        draft.by(limit.get());
        double ohmPerKm = copper.get().requireNumber();
        ControlLoads.Loss loss = wiring.loads().loss(drive, ohmPerKm);
        List<FactId> missing = new ArrayList<>(loss.missing());
        Double ratedV = drive.supply().voltageV();
        Double leastV = port.leastVoltageV();
        if (ratedV == null) missing.add(drive.supply().fact("voltageV"));
        if (leastV == null) missing.add(port.fact("leastVoltageV"));
        draft.on(drive.supply().fact("voltageV")).on(port.fact("leastVoltageV"));
        if (!missing.isEmpty() || ratedV == null || leastV == null) {
            draft.openFor(missing);
            return;
        }
        double suppliedV = ratedV * ratio.get().requireNumber();
        double endV = suppliedV - loss.dropV();
        draft.measure(endV, leastV, Unit.V);
        judging.trace()
                .line(
                        "calculation.control.voltage",
                        amount(ratedV, Unit.V),
                        amount(ratio.get().requireNumber(), Unit.PERCENT),
                        amount(loss.dropV(), Unit.V),
                        amount(loss.wayM(), Unit.M),
                        amount(endV, Unit.V));
        judging.trace().line("calculation.control.length", amount(largestM(loss, suppliedV - leastV), Unit.M));
        draft.on(loss.facts());
        if (endV >= leastV)
            draft.met(
                    "control.coilVoltage.met",
                    Meanings.terminals(port),
                    Meanings.device(port),
                    amount(endV, Unit.V),
                    amount(leastV, Unit.V));
        else
            draft.notMet(
                    "control.coilVoltage.below",
                    Meanings.terminals(port),
                    Meanings.device(port),
                    amount(endV, Unit.V),
                    amount(leastV, Unit.V),
                    amount(loss.wayM(), Unit.M),
                    amount(largestM(loss, suppliedV - leastV), Unit.M));
    }

    /** Largest length of all cores together, there and back, with these sections and currents; none is never too long. */
    private static double largestM(ControlLoads.Loss loss, double allowedV) {
        if (allowedV <= 0) return 0;
        return loss.dropV() > 0 ? loss.wayM() * allowedV / loss.dropV() : Double.POSITIVE_INFINITY;
    }
}
