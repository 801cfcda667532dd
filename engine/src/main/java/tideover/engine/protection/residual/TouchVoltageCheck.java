package tideover.engine.protection.residual;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.protection.FaultStory;
import tideover.engine.protection.FaultStudy;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Electrode;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/**
 * Where a fault returns over earth, electrode resistance times rated residual current stays within 50 V
 * (IEC 60364-4-41, 411.5.3). Whether it does in a state is seen from the way of the fault, not from the supply.
 */
final class TouchVoltageCheck implements Check<ProtectionStudies> {

    private record Worst(OperatingState state, double electrodeOhm) {}

    @Override
    public String id() {
        return "rcd.touchVoltage";
    }

    @Override
    public OnAssumption onAssumption() {
        return Rcds.ON_ASSUMPTION;
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Installation installation = studies.installation();
        Optional<Limit> limit = judging.limit("rcd.touchVoltageV");
        if (studies.faults() == null) return;
        Map<ThingId, Worst> worst = new LinkedHashMap<>();
        for (Circuit circuit : installation.circuits())
            if (installation.isTouched(circuit)) collect(installation, studies.faults(), circuit, worst);
        worst.forEach((id, found) -> {
            Fed holder = installation.findFed(id).orElseThrow();
            Judging.Draft draft = judging.at(id, found.state());
            if (limit.isEmpty()) draft.openForLimit("rcd.touchVoltageV");
            else judge(installation, holder, found, limit.get(), draft.by(limit.get()));
        });
    }

    private static void collect(
            Installation installation, FaultStudy faults, Circuit circuit, Map<ThingId, Worst> worst) {
        for (OperatingState state : installation.states())
            for (FaultStory story : faults.lineToEarth(circuit, state)) {
                if (story.system() != EarthingSystem.TT) continue;
                for (ThingId rcd : story.acting())
                    worst.merge(
                            rcd,
                            new Worst(state, story.electrodeOhm()),
                            (a, b) -> b.electrodeOhm() > a.electrodeOhm() ? b : a);
            }
    }

    private static void judge(Installation installation, Fed holder, Worst found, Limit limit, Judging.Draft draft) {
        Double ratedA = Rcds.device(holder).ratedResidualCurrentA();
        draft.on(holder.fact("rcd.ratedResidualCurrentA"));
        for (Electrode electrode : installation.electrodes()) {
            draft.on(electrode.fact("resistanceOhm"));
            if (electrode.resistanceOhm() == null) {
                draft.openFor(electrode.fact("resistanceOhm"));
                return;
            }
        }
        if (ratedA == null) {
            draft.openFor(holder.fact("rcd.ratedResidualCurrentA"));
            return;
        }
        double touchV = found.electrodeOhm() * ratedA;
        double limitV = limit.requireNumber();
        draft.measure(touchV, limitV, Unit.V);
        if (touchV > limitV)
            draft.notMet(
                    "rcd.touchVoltage.above",
                    name(holder.id()),
                    amount(found.electrodeOhm(), Unit.OHM),
                    amount(ratedA, Unit.RESIDUAL_A),
                    amount(touchV, Unit.V),
                    amount(limitV, Unit.V));
        else draft.met("rcd.touchVoltage.met", name(holder.id()), amount(touchV, Unit.V), amount(limitV, Unit.V));
    }
}
