package tideover.engine.protection.overload;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.network.InstalledAmpacity;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Thing;

/** Design current, rated current and ampacity rise in this order: I_b ≤ I_n ≤ I_z (IEC 60364-4-43, 433.1). */
final class DesignCurrentCheck implements Check<ProtectionStudies> {

    @Override
    public String id() {
        return "overload.design";
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit("overload.design");
        Optional<String> uncovered = limit.isEmpty() ? Optional.of("overload.design") : Overload.uncovered(judging);
        for (Thing thing : studies.installation().things()) {
            if (!(thing instanceof Fed fed) || !Overload.concerns(studies.installation(), fed)) continue;
            if (uncovered.isPresent()) judging.at(fed.id()).openForLimit(uncovered.get());
            else limit.ifPresent(demanded -> judge(studies, fed, demanded, judging));
        }
    }

    private static void judge(ProtectionStudies studies, Fed fed, Limit limit, Judging judging) {
        Overload overload = Overload.of(studies, fed, judging);
        Double designA = overload.designA();
        Double ratedA = overload.ratedA();
        Double ampacityA = overload.ampacityA();
        boolean drawsTooMuch = designA != null && ratedA != null && designA > ratedA;
        boolean isTooThin = ratedA != null && ampacityA != null && ratedA > ampacityA;
        // What is drawn and fed is largest when connected; a section is too small in every state.
        Judging.Draft draft = drawsTooMuch && !isTooThin
                ? judging.at(fed.id(), OperatingState.CONNECTED).by(limit)
                : judging.at(fed.id()).by(limit);
        overload.before().ifPresent(before -> draft.on(before.ratedCurrent()));
        draft.on(Overload.ampacityFacts(fed));
        if (fed instanceof Circuit circuit && studies.demand() != null)
            draft.on(studies.demand().facts(circuit));
        overload.ampacity().ifPresent(ampacity -> explain(ampacity, overload.factorRatio(), judging));
        overload.harmonics().ifPresent(harmonics -> explain(harmonics, ampacityA, judging));
        if (isTooThin && ratedA != null && ampacityA != null)
            draft.measure(ratedA, ampacityA, Unit.A)
                    .notMet(
                            "overload.design.section",
                            name(fed.id()),
                            amount(ratedA, Unit.A),
                            amount(ampacityA, Unit.A));
        else if (drawsTooMuch && designA != null && ratedA != null)
            draft.measure(designA, ratedA, Unit.A)
                    .notMet("overload.design.device", name(fed.id()), amount(designA, Unit.A), amount(ratedA, Unit.A));
        else if (!overload.missing().isEmpty()) draft.openFor(overload.missing());
        else if (designA == null || ratedA == null || ampacityA == null)
            draft.openForLimit("switch.coincidence.lighting");
        else
            draft.measure(ratedA, ampacityA, Unit.A)
                    .met(
                            "overload.design.met",
                            name(fed.id()),
                            amount(designA, Unit.A),
                            amount(ratedA, Unit.A),
                            amount(ampacityA, Unit.A));
    }

    private static void explain(Harmonics harmonics, @Nullable Double ampacityA, Judging judging) {
        if (ampacityA == null) return;
        judging.trace()
                .line(
                        "calculation.overload.harmonics",
                        amount(harmonics.thirdRatio(), Unit.RATIO),
                        word(harmonics.row().sizedOn()),
                        amount(harmonics.ampacityRatio(), Unit.RATIO),
                        amount(ampacityA, Unit.A));
    }

    private static void explain(InstalledAmpacity ampacity, double factorRatio, Judging judging) {
        judging.trace()
                .line(
                        "calculation.overload.ampacity",
                        amount(ampacity.tabulated().currentA(), Unit.A),
                        amount(ampacity.temperatureRatio(), Unit.RATIO),
                        amount(ampacity.groupingRatio(), Unit.RATIO),
                        amount(factorRatio, Unit.RATIO),
                        amount(ampacity.currentA() * factorRatio, Unit.A));
    }
}
