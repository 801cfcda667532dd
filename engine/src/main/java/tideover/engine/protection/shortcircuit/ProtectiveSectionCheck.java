package tideover.engine.protection.shortcircuit;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

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
import tideover.engine.rules.Unit;
import tideover.engine.site.Cable;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Thing;

/**
 * A new protective conductor is not below Table 54.2 of IEC 60364-5-54, or bears the heat of a fault to it, calculated by
 * 543.1.2.
 */
final class ProtectiveSectionCheck implements Check<ProtectionStudies> {

    @Override
    public String id() {
        return "conductor.protective";
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit("conductor.protective");
        for (Thing thing : studies.installation().things()) {
            if (!(thing instanceof Fed fed) || !Overload.concerns(studies.installation(), fed)) continue;
            if (!fed.has(Conductor.PE)) continue;
            Judging.Draft draft = judging.at(fed.id());
            if (limit.isEmpty()) draft.openForLimit("conductor.protective");
            else judge(studies, fed, draft.by(limit.get()), judging);
        }
    }

    private static void judge(ProtectionStudies studies, Fed fed, Judging.Draft draft, Judging judging) {
        Cable cable = fed.cable();
        Double lineMm2 = cable == null ? null : cable.crossSectionMm2();
        draft.on(fed.fact("cable.crossSectionMm2"));
        if (cable == null || lineMm2 == null) {
            draft.openFor(fed.fact("cable.crossSectionMm2"));
            return;
        }
        double ownMm2 = cable.protectiveCrossSectionMm2() == null ? lineMm2 : cable.protectiveCrossSectionMm2();
        double smallestMm2 = studies.tables().protectiveConductors().smallestMm2(lineMm2);
        if (ownMm2 >= smallestMm2)
            draft.measure(ownMm2, smallestMm2, Unit.MM2)
                    .met(
                            "conductor.protective.met",
                            name(fed.id()),
                            amount(ownMm2, Unit.MM2),
                            amount(smallestMm2, Unit.MM2));
        else calculate(studies, fed, cable, ownMm2, smallestMm2, draft, judging);
    }

    /** Below the table the fault itself decides. */
    private static void calculate(
            ProtectionStudies studies,
            Fed fed,
            Cable cable,
            double ownMm2,
            double tableMm2,
            Judging.Draft draft,
            Judging judging) {
        Installation installation = studies.installation();
        FaultCourses faults = studies.faults();
        Optional<Upstream> before = Upstream.find(installation, fed.id());
        draft.on(fed.fact("cable.protectiveCrossSectionMm2"));
        if (faults == null || before.isEmpty() || !installation.gaps(fed).isEmpty()) {
            draft.measure(ownMm2, tableMm2, Unit.MM2)
                    .notMet(
                            "conductor.protective.below",
                            name(fed.id()),
                            amount(ownMm2, Unit.MM2),
                            amount(tableMm2, Unit.MM2));
            return;
        }
        Breaking breaking = Breaking.of(installation, faults, before.get());
        draft.on(breaking.facts())
                .on(before.get().facts())
                .on(fed.fact("cable.material"))
                .on(fed.fact("cable.insulation"))
                .on(fed.fact("cable.lengthM"));
        if (breaking.ability() == Breaking.Ability.UNKNOWN) {
            draft.openFor(breaking.missing());
            return;
        }
        FaultHeat beginning = FaultHeat.atBeginning(studies.tables(), breaking);
        FaultHeat end = FaultHeat.atEnd(faults, fed, List.of(FaultKind.LINE_TO_EARTH));
        FaultHeat worst = end.heatA2s() > beginning.heatA2s() ? end : beginning;
        double k = FaultHeat.k(studies.tables(), cable);
        double neededMm2 = Math.sqrt(worst.heatA2s()) / k;
        FaultHeat.explain(beginning, end, judging.trace());
        judging.trace().line("calculation.conductor.protective", amount(k, Unit.RATIO), amount(neededMm2, Unit.MM2));
        List<FactId> missing = worst.missing();
        draft.measure(ownMm2, Math.min(neededMm2, tableMm2), Unit.MM2);
        if (ownMm2 >= neededMm2)
            draft.met(
                    "conductor.protective.calculated",
                    name(fed.id()),
                    amount(ownMm2, Unit.MM2),
                    amount(neededMm2, Unit.MM2),
                    amount(tableMm2, Unit.MM2));
        else if (!missing.isEmpty()) draft.openFor(missing);
        else
            draft.notMet(
                    "conductor.protective.below",
                    name(fed.id()),
                    amount(ownMm2, Unit.MM2),
                    amount(Math.min(neededMm2, tableMm2), Unit.MM2));
    }
}
