package tideover.engine.network;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.LoadKind;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PerLine;

/**
 * Loads that need care: a medical device never hangs on island operation alone, and a load that by itself draws more than
 * the island gives on its line cannot run in it.
 */
final class CareCheck implements Check<NetworkStudies> {

    @Override
    public String id() {
        return "care.load";
    }

    @Override
    public void judge(NetworkStudies studies, Judging judging) {
        Installation installation = studies.installation();
        if (installation.formingInverters().isEmpty()) return;
        Optional<Limit> medical = judging.limit("care.medical");
        Optional<Limit> largest = judging.limit("care.largestLoadRatio");
        for (Circuit circuit : installation.circuits()) {
            boolean isMedical = circuit.load() != null && circuit.load().kind() == LoadKind.MEDICAL;
            if (!isMedical && !installation.staysOn(circuit)) continue;
            Judging.Draft draft = judging.at(circuit.id(), OperatingState.ISLAND_GRID_DEAD);
            if (medical.isEmpty() || largest.isEmpty() || studies.demand() == null) draft.openForLimit("care.medical");
            else if (isMedical) judgeMedical(installation, circuit, draft.by(medical.get()));
            else judgeSize(installation, studies.demand(), circuit, largest.get(), draft.by(largest.get()));
        }
    }

    private static void judgeMedical(Installation installation, Circuit circuit, Judging.Draft draft) {
        draft.on(circuit.fact("load.kind"));
        if (installation.staysOn(circuit)) draft.notMet("care.load.medical", name(circuit.id()));
        else draft.notMet("care.load.medicalDark", name(circuit.id()));
    }

    private static void judgeSize(
            Installation installation, Demand demand, Circuit circuit, Limit limit, Judging.Draft draft) {
        List<FactId> missing = new ArrayList<>(demand.missing(circuit));
        draft.on(demand.facts(circuit));
        double drawnA = demand.findCurrentA(circuit).orElse(PerLine.ZERO).largest();
        double givenA = Double.POSITIVE_INFINITY;
        for (Conductor line : installation.lines(circuit.id())) {
            double lineA = 0;
            for (Inverter inverter : installation.formingInverters()) {
                if (!installation.lines(inverter.id()).contains(line)) continue;
                draft.on(inverter.fact("lineCurrentA"));
                if (inverter.lineCurrentA() == null) missing.add(inverter.fact("lineCurrentA"));
                else lineA += inverter.lineCurrentA();
            }
            // A line without an island source is not live.
            if (lineA > 0) givenA = Math.min(givenA, lineA);
        }
        if (!missing.isEmpty()) {
            draft.openFor(missing);
            return;
        }
        draft.measure(drawnA, limit.requireNumber() * givenA, Unit.A);
        if (drawnA > limit.requireNumber() * givenA)
            draft.notMet("care.load.tooLarge", name(circuit.id()), amount(drawnA, Unit.A), amount(givenA, Unit.A));
        else draft.met("care.load.met", name(circuit.id()), amount(drawnA, Unit.A), amount(givenA, Unit.A));
    }
}
