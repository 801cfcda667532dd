package tideover.engine.network;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.Comparator;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Inverter;
import tideover.engine.site.LoadKind;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PerLine;

/**
 * Loads that need care: a medical device never hangs on island operation alone; a load that takes a large part of what the
 * island gives on its line wants to run alone, and one that takes more cannot run. What is not known of a load or of the
 * source is asked for by the check of loading.
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
        Optional<Limit> large = judging.limit("care.largeLoadRatio");
        if (medical.isEmpty() || large.isEmpty() || studies.demand() == null) {
            // Asked once, at the same inverter whatever their order in the file.
            installation.formingInverters().stream()
                    .map(Inverter::id)
                    .min(Comparator.naturalOrder())
                    .ifPresent(id -> judging.at(id).openForLimit("care.medical"));
            return;
        }
        for (Circuit circuit : installation.circuits()) {
            if (circuit.load() != null && circuit.load().kind() == LoadKind.MEDICAL)
                judgeMedical(installation, circuit, medical.get(), judging);
            else if (installation.staysOn(circuit))
                judgeSize(installation, studies.demand(), circuit, large.get(), judging);
        }
    }

    private static void judgeMedical(Installation installation, Circuit circuit, Limit limit, Judging judging) {
        Judging.Draft draft = judging.at(circuit.id(), OperatingState.ISLAND_GRID_DEAD)
                .by(limit)
                .on(circuit.fact("load.kind"));
        if (installation.staysOn(circuit)) draft.notMet("care.load.medical", name(circuit.id()));
        else draft.notMet("care.load.medicalDark", name(circuit.id()));
    }

    private static void judgeSize(
            Installation installation, Demand demand, Circuit circuit, Limit limit, Judging judging) {
        Judging.Draft draft = judging.at(circuit.id(), OperatingState.ISLAND_GRID_DEAD)
                .by(limit)
                .on(demand.facts(circuit));
        double drawnA = demand.findCurrentA(circuit).orElse(PerLine.ZERO).largest();
        double givenA = Double.POSITIVE_INFINITY;
        for (Conductor line : installation.lines(circuit.id())) {
            double lineA = 0;
            for (Inverter inverter : installation.formingInverters()) {
                if (!installation.lines(inverter.id()).contains(line)) continue;
                draft.on(inverter.fact("lineCurrentA"));
                lineA += inverter.lineCurrentA() == null ? Double.POSITIVE_INFINITY : inverter.lineCurrentA();
            }
            // A line without an island source is not live.
            if (lineA > 0) givenA = Math.min(givenA, lineA);
        }
        if (drawnA <= limit.requireNumber() * givenA) return;
        draft.measure(drawnA, givenA, Unit.A);
        PhraseArg[] said = {name(circuit.id()), amount(drawnA, Unit.A), amount(givenA, Unit.A)};
        if (drawnA > givenA) draft.notMet("care.load.tooLarge", said);
        else draft.met("care.load.alone", said);
    }
}
