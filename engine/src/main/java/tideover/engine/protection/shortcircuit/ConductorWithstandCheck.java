package tideover.engine.protection.shortcircuit;

import static java.util.Objects.requireNonNull;
import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.network.Upstream;
import tideover.engine.protection.FaultCourses;
import tideover.engine.protection.FaultKind;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.protection.overload.Overload;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Trace;
import tideover.engine.rules.Unit;
import tideover.engine.site.Cable;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.Thing;

/**
 * New conductors bear a short circuit. A device that protects against overload too and breaks what may flow is deemed to
 * protect (435.1); else its let-through at the beginning and the time it takes at the end must stay within k²S² (434.5.2).
 */
final class ConductorWithstandCheck implements Check<ProtectionStudies> {

    private static final String LIMIT = "shortCircuit.conductor";

    private static final List<FaultKind> KINDS =
            List.of(FaultKind.LINE_TO_NEUTRAL, FaultKind.LINE_TO_LINE, FaultKind.THREE_LINES);

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit(LIMIT);
        Installation installation = studies.installation();
        for (Thing thing : installation.things()) {
            if (!(thing instanceof Fed fed) || !Overload.concerns(installation, fed)) continue;
            Judging.Draft draft = judging.at(fed.id());
            Optional<Upstream> before = Upstream.find(installation, fed.id());
            if (limit.isEmpty() || studies.faults() == null) draft.openForLimit(LIMIT);
            else if (!installation.gaps(fed).isEmpty()) draft.openFor(installation.gaps(fed));
            else if (before.isEmpty()) draft.openFor(installation.supply().fact("mainFuse.ratedCurrentA"));
            else judge(studies, studies.faults(), fed, before.get(), draft.by(limit.get()), judging);
        }
    }

    private static void judge(
            ProtectionStudies studies,
            FaultCourses faults,
            Fed fed,
            Upstream before,
            Judging.Draft draft,
            Judging judging) {
        Breaking breaking = Breaking.of(studies.installation(), faults, before);
        draft.on(breaking.facts()).on(before.facts());
        if (breaking.ability() == Breaking.Ability.UNKNOWN) {
            draft.openFor(breaking.missing());
        } else if (breaking.ability() == Breaking.Ability.TOO_LITTLE) {
            // What it lets through is anybody's guess: the breaking capacity says so, once.
            draft.notApplicable("shortCircuit.conductor.notBroken", name(fed.id()), name(before.holder()));
        } else {
            Overload overload = Overload.ofCable(studies, fed, judging);
            if (isDeemed(before, overload, judging))
                deemed(fed, overload, draft.on(Overload.ampacityFacts(fed)), judging);
            else judge(studies, faults, fed, breaking, overload, draft, judging);
        }
    }

    /** Breakers of IEC 60947-2 may wait or limit nothing: of them the clause itself is not sure. */
    private static boolean isDeemed(Upstream before, Overload overload, Judging judging) {
        Double ratedA = overload.ratedA();
        Double ampacityA = overload.ampacityA();
        return Overload.uncovered(judging).isEmpty()
                && ratedA != null
                && ampacityA != null
                && ratedA <= ampacityA
                && (before.device().kind() == OvercurrentKind.MCB
                        || before.device().kind() == OvercurrentKind.FUSE);
    }

    private static void deemed(Fed fed, Overload overload, Judging.Draft draft, Judging judging) {
        double ratedA = requireNonNull(overload.ratedA());
        double ampacityA = requireNonNull(overload.ampacityA());
        judging.trace().line("calculation.shortCircuit.deemed", amount(ratedA, Unit.A), amount(ampacityA, Unit.A));
        draft.measure(ratedA, ampacityA, Unit.A)
                .met(
                        "shortCircuit.conductor.deemed",
                        name(fed.id()),
                        amount(ratedA, Unit.A),
                        amount(ampacityA, Unit.A));
    }

    private static void judge(
            ProtectionStudies studies,
            FaultCourses faults,
            Fed fed,
            Breaking breaking,
            Overload overload,
            Judging.Draft draft,
            Judging judging) {
        Cable cable = fed.cable();
        draft.on(fed.fact("cable.crossSectionMm2"))
                .on(fed.fact("cable.material"))
                .on(fed.fact("cable.insulation"))
                .on(fed.fact("cable.lengthM"));
        if (cable == null || cable.crossSectionMm2() == null) {
            draft.openFor(fed.fact("cable.crossSectionMm2"));
            return;
        }
        double smallestMm2 = fed.has(Conductor.N) && cable.neutralCrossSectionMm2() != null
                ? Math.min(cable.crossSectionMm2(), cable.neutralCrossSectionMm2())
                : cable.crossSectionMm2();
        double bornA2s = FaultHeat.withstandA2s(studies.tables(), cable, smallestMm2);
        FaultHeat beginning = FaultHeat.atBeginning(studies.tables(), breaking);
        FaultHeat end = FaultHeat.atEnd(faults, fed, KINDS);
        explain(studies, cable, smallestMm2, beginning, end, bornA2s, judging.trace());
        FaultHeat worst = end.heatA2s() > beginning.heatA2s() ? end : beginning;
        List<FactId> missing = new ArrayList<>(worst.missing());
        if (overload.ampacityA() == null) missing.addAll(overload.missing());
        if (worst.heatA2s() <= bornA2s)
            draft.measure(worst.heatA2s(), bornA2s, Unit.A2S)
                    .met(
                            "shortCircuit.conductor.met",
                            name(fed.id()),
                            amount(worst.heatA2s(), Unit.A2S),
                            amount(bornA2s, Unit.A2S));
        else if (!missing.isEmpty()) draft.openFor(missing);
        else if (worst.isUnending())
            draft.notMet("shortCircuit.conductor.never", name(fed.id()), amount(worst.currentA(), Unit.A));
        else
            draft.measure(worst.heatA2s(), bornA2s, Unit.A2S)
                    .notMet(
                            "shortCircuit.conductor.above",
                            name(fed.id()),
                            amount(worst.currentA(), Unit.A),
                            amount(worst.heatA2s(), Unit.A2S),
                            amount(bornA2s, Unit.A2S));
    }

    private static void explain(
            ProtectionStudies studies,
            Cable cable,
            double crossSectionMm2,
            FaultHeat beginning,
            FaultHeat end,
            double bornA2s,
            Trace trace) {
        if (!trace.isOn()) return;
        FaultHeat.explain(beginning, end, trace);
        trace.line(
                "calculation.shortCircuit.withstand",
                amount(FaultHeat.k(studies.tables(), cable), Unit.RATIO),
                amount(crossSectionMm2, Unit.MM2),
                amount(bornA2s, Unit.A2S));
    }
}
