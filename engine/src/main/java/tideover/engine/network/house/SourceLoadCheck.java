package tideover.engine.network.house;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.names;
import static tideover.engine.rules.PhraseArg.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.network.HoldBack;
import tideover.engine.network.Share;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PerLine;
import tideover.engine.site.ThingId;

/**
 * On each line an island source gives what the house draws at worst. If it cannot, that is said line by line, with what to
 * hold back; the source itself shuts down then, which is the means of disconnection of IEC 60364-5-55, 551.2.
 */
final class SourceLoadCheck implements Check<FlowStudies> {

    @Override
    public String id() {
        return "loading.line";
    }

    @Override
    public void judge(FlowStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit("loading.line");
        for (Inverter inverter : studies.installation().formingInverters()) {
            Judging.Draft draft = judging.at(inverter.id(), OperatingState.ISLAND_GRID_DEAD);
            if (limit.isEmpty() || studies.flows() == null) draft.openForLimit("loading.line");
            else judge(studies, studies.flows(), inverter, draft.by(limit.get()), judging);
        }
    }

    private static void judge(
            FlowStudies studies, FlowStudy flows, Inverter inverter, Judging.Draft draft, Judging judging) {
        List<Circuit> circuits = fedInIsland(studies.installation());
        List<FactId> missing = new ArrayList<>(0);
        draft.on(inverter.fact("lineCurrentA")).on(inverter.fact("ratedPowerVa"));
        if (inverter.lineCurrentA() == null) missing.add(inverter.fact("lineCurrentA"));
        for (Circuit circuit : circuits) {
            draft.on(flows.demand().facts(circuit));
            missing.addAll(flows.demand().missing(circuit));
        }
        HouseFlowResult result = flows.flow(OperatingState.ISLAND_GRID_DEAD, Regime.DRAWING);
        if (result instanceof Unsolved unsolved) {
            draft.notMet("voltage.unsolved", name(inverter.id()), name(unsolved.worst()));
            return;
        }
        if (!(result instanceof HouseFlow flow)) return;
        SourceLoading loading = flow.sources().stream()
                .filter(source -> source.source().equals(inverter.id()))
                .findFirst()
                .orElse(null);
        if (loading == null) return;
        if (judging.trace().isOn()) explain(flows, loading, judging);
        conclude(studies, flows, circuits, loading, missing, draft);
    }

    private static List<Circuit> fedInIsland(Installation installation) {
        View view = installation.in(OperatingState.ISLAND_GRID_DEAD);
        List<Circuit> fed = new ArrayList<>();
        for (Circuit circuit : installation.circuits())
            if (view.findSource(circuit).isPresent()) fed.add(circuit);
        return fed;
    }

    private static void explain(FlowStudy flows, SourceLoading loading, Judging judging) {
        for (Share share : flows.shares(OperatingState.ISLAND_GRID_DEAD))
            judging.trace()
                    .line(
                            "calculation.loading.share",
                            name(share.circuit().id()),
                            word(share.line()),
                            amount(share.addedA(), Unit.A),
                            word(share.reason()));
        judging.trace()
                .line(
                        "calculation.loading.source",
                        name(loading.source()),
                        amount(loading.currentA().l1(), Unit.A),
                        amount(loading.currentA().l2(), Unit.A),
                        amount(loading.currentA().l3(), Unit.A),
                        amount(loading.powerVa(), Unit.VA));
    }

    private static void conclude(
            FlowStudies studies,
            FlowStudy flows,
            List<Circuit> circuits,
            SourceLoading loading,
            List<FactId> missing,
            Judging.Draft draft) {
        Conductor worst = worstLine(loading.currentA());
        double worstA = loading.currentA().of(worst);
        Double limitA = loading.limitA();
        Double limitVa = loading.limitVa();
        if (limitA != null && worstA > limitA) {
            draft.measure(worstA, limitA, Unit.A);
            List<ThingId> back = HoldBack.fewest(flows.demand(), circuits, allowedA(studies, flows.nominalVoltageV()));
            if (back.isEmpty())
                draft.notMet(
                        "loading.line.above",
                        name(loading.source()),
                        word(worst),
                        amount(worstA, Unit.A),
                        amount(limitA, Unit.A));
            else
                draft.notMet(
                        "loading.line.above.holdBack",
                        name(loading.source()),
                        word(worst),
                        amount(worstA, Unit.A),
                        amount(limitA, Unit.A),
                        names(back));
        } else if (limitVa != null && loading.powerVa() > limitVa) {
            draft.measure(loading.powerVa(), limitVa, Unit.VA)
                    .notMet(
                            "loading.line.total",
                            name(loading.source()),
                            amount(loading.powerVa(), Unit.VA),
                            amount(limitVa, Unit.VA));
        } else if (!missing.isEmpty() || limitA == null) {
            draft.openFor(missing);
        } else {
            draft.measure(worstA, limitA, Unit.A)
                    .met("loading.line.met", name(loading.source()), amount(worstA, Unit.A), amount(limitA, Unit.A));
        }
    }

    /** What all island sources together give on each line. */
    private static PerLine allowedA(FlowStudies studies, double nominalVoltageV) {
        PerLine allowedA = PerLine.ZERO;
        for (Inverter inverter : studies.installation().formingInverters()) {
            List<Conductor> lines = studies.installation().lines(inverter.id());
            double eachA = inverter.lineCurrentA() == null ? Double.POSITIVE_INFINITY : inverter.lineCurrentA();
            if (inverter.ratedPowerVa() != null)
                eachA = Math.min(eachA, inverter.ratedPowerVa() / (lines.size() * nominalVoltageV));
            allowedA = allowedA.plus(new PerLine(
                    lines.contains(Conductor.L1) ? eachA : 0,
                    lines.contains(Conductor.L2) ? eachA : 0,
                    lines.contains(Conductor.L3) ? eachA : 0));
        }
        return allowedA;
    }

    private static Conductor worstLine(PerLine currentA) {
        if (currentA.l1() >= currentA.l2() && currentA.l1() >= currentA.l3()) return Conductor.L1;
        return currentA.l2() >= currentA.l3() ? Conductor.L2 : Conductor.L3;
    }
}
