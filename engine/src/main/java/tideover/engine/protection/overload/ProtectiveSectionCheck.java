package tideover.engine.protection.overload;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.Optional;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Cable;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Thing;

/** A new protective conductor is not below Table 54.2 of IEC 60364-5-54. */
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
            else judge(studies, fed, draft.by(limit.get()));
        }
    }

    private static void judge(ProtectionStudies studies, Fed fed, Judging.Draft draft) {
        Cable cable = fed.cable();
        Double lineMm2 = cable == null ? null : cable.crossSectionMm2();
        draft.on(fed.fact("cable.crossSectionMm2"));
        if (cable == null || lineMm2 == null) {
            draft.openFor(fed.fact("cable.crossSectionMm2"));
            return;
        }
        double ownMm2 = cable.protectiveCrossSectionMm2() == null ? lineMm2 : cable.protectiveCrossSectionMm2();
        double smallestMm2 = studies.tables().protectiveConductors().smallestMm2(lineMm2);
        draft.measure(ownMm2, smallestMm2, Unit.MM2);
        PhraseArg[] said = {name(fed.id()), amount(ownMm2, Unit.MM2), amount(smallestMm2, Unit.MM2)};
        if (ownMm2 < smallestMm2) draft.notMet("conductor.protective.below", said);
        else draft.met("conductor.protective.met", said);
    }
}
