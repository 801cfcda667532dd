package tideover.engine.protection.overload;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.network.Demand;
import tideover.engine.network.NeutralCurrent;
import tideover.engine.network.Share;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.Cable;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.ThingId;

/**
 * A neutral bears what it carries (IEC 60364-5-52, 523.6 and 524.2). Asked where it may carry more than the device of a line
 * guards against, or bears less than a line: third harmonics, a neutral that circuits share, one thinner than its lines.
 */
final class NeutralCurrentCheck implements Check<ProtectionStudies> {

    @Override
    public String id() {
        return "overload.neutral";
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit("overload.neutral");
        Optional<String> uncovered = limit.isEmpty() ? Optional.of("overload.neutral") : Overload.uncovered(judging);
        for (Fed fed : studies.installation().all(Fed.class)) {
            if (!concerns(studies.installation(), fed)) continue;
            Judging.Draft draft = judging.at(fed.id());
            if (uncovered.isPresent()) draft.openForLimit(uncovered.get());
            else if (limit.isEmpty() || studies.demand() == null) draft.openForLimit("switch.coincidence.lighting");
            else judge(studies, studies.demand(), fed, draft.by(limit.get()), judging);
        }
    }

    private static boolean concerns(Installation installation, Fed fed) {
        Cable cable = fed.cable();
        if (cable == null || !fed.has(Conductor.N) || !installation.isTouched(fed)) return false;
        Double lineMm2 = cable.crossSectionMm2();
        Double neutralMm2 = cable.neutralCrossSectionMm2();
        boolean isThinner = lineMm2 != null && neutralMm2 != null && neutralMm2 < lineMm2;
        return isThinner
                || Harmonics.ratio(fed) > 0
                || partners(installation, fed).size() > 1;
    }

    /** Circuits over whose common neutral a circuit returns, itself included; none for what is no circuit. */
    private static List<Circuit> partners(Installation installation, Fed fed) {
        List<Circuit> partners = new ArrayList<>();
        if (!(fed instanceof Circuit circuit)) return partners;
        partners.add(circuit);
        if (circuit.sharedNeutralWith() == null) return partners;
        for (ThingId id : circuit.sharedNeutralWith())
            if (installation.findFed(id).orElse(null) instanceof Circuit partner && !partners.contains(partner))
                partners.add(partner);
        return partners;
    }

    private static void judge(ProtectionStudies studies, Demand demand, Fed fed, Judging.Draft draft, Judging judging) {
        List<FactId> missing = new ArrayList<>();
        List<Circuit> returning =
                fed instanceof Circuit ? partners(studies.installation(), fed) : demand.circuitsBehind(fed.id());
        for (Circuit circuit : returning) {
            draft.on(demand.facts(circuit));
            if (Harmonics.ratio(circuit) > 0) draft.on(circuit.fact("load.thirdHarmonicRatio"));
            missing.addAll(demand.missing(circuit));
        }
        draft.on(Overload.ampacityFacts(fed)).on(fed.fact("cable.neutralCrossSectionMm2"));
        Optional<Double> bareA = Overload.findNeutralAmpacityA(studies, fed, judging, missing);
        if (bareA.isEmpty() || !missing.isEmpty()) {
            draft.openFor(missing);
            return;
        }
        NeutralCurrent current = Demand.neutralCurrent(shares(demand, fed, returning));
        double bearsA = bareA.get()
                * Harmonics.find(studies, fed)
                        .map(each -> each.row().factorRatio())
                        .orElse(1.0);
        judging.trace()
                .line(
                        "calculation.overload.neutral",
                        amount(current.unbalanceA(), Unit.A),
                        amount(current.thirdA(), Unit.A),
                        amount(current.currentA(), Unit.A));
        draft.measure(current.currentA(), bearsA, Unit.A);
        if (current.currentA() > bearsA)
            draft.notMet(
                    "overload.neutral.above",
                    name(fed.id()),
                    amount(current.currentA(), Unit.A),
                    amount(bearsA, Unit.A));
        else
            draft.met(
                    "overload.neutral.met", name(fed.id()), amount(current.currentA(), Unit.A), amount(bearsA, Unit.A));
    }

    /** Circuits on one cable are all in full use at once; of a feeder the worst credible coincidence counts. */
    private static List<Share> shares(Demand demand, Fed fed, List<Circuit> returning) {
        if (!(fed instanceof Circuit)) return demand.shares(returning);
        List<Share> shares = new ArrayList<>();
        for (Share share : demand.shares(returning))
            shares.add(new Share(share.circuit(), share.line(), share.currentA(), 1, Share.Reason.IN_FULL));
        return shares;
    }
}
