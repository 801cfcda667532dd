package tideover.engine.protection.shortcircuit;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.count;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.network.Upstream;
import tideover.engine.protection.FaultCourses;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.protection.overload.Overload;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Trace;
import tideover.engine.rules.Unit;
import tideover.engine.site.Cable;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Thing;

/**
 * While islanded, conductors that no longer have their device between them and the source are protected by what the source
 * cannot exceed (436), by another device, or by its shut-down within the time they bear (434.5.2). All others have the
 * device they have when connected.
 */
final class IslandSourceCheck implements Check<ProtectionStudies> {

    private static final String LIMIT = "shortCircuit.island";
    private static final OperatingState ISLAND = OperatingState.ISLAND_GRID_DEAD;

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit(LIMIT);
        Installation installation = studies.installation();
        if (!installation.states().contains(ISLAND)) return;
        for (Thing thing : installation.things()) {
            if (!(thing instanceof Fed fed) || fed.cable() == null) continue;
            Optional<IslandFault> fault = IslandFault.find(installation, fed);
            if (fault.isEmpty()) continue;
            Judging.Draft draft = judging.at(fed.id(), ISLAND);
            if (limit.isEmpty() || studies.faults() == null) draft.openForLimit(LIMIT);
            else if (!installation.gaps(fed).isEmpty()) draft.openFor(installation.gaps(fed));
            else judge(studies, fed, fault.get(), draft.by(limit.get()), judging);
        }
    }

    private static void judge(
            ProtectionStudies studies, Fed fed, IslandFault fault, Judging.Draft draft, Judging judging) {
        Double largestA = fault.largestA();
        draft.on(fault.facts());
        if (largestA == null) {
            draft.openFor(fault.missing());
            return;
        }
        Overload overload = Overload.ofCable(studies, fed, judging);
        Double ampacityA = Overload.uncovered(judging).isPresent() ? null : overload.ampacityA();
        PhraseArg place = name(fed.id());
        PhraseArg source = name(fault.source());
        PhraseArg current = amount(largestA, Unit.A);
        PhraseArg dark = count(fault.dark(studies.installation()).size());
        judging.trace().line("calculation.shortCircuit.island", source, current);
        if (ampacityA != null) {
            draft.on(Overload.ampacityFacts(fed));
            Upstream device = findWithin(fault, ampacityA);
            if (largestA <= ampacityA) {
                draft.measure(largestA, ampacityA, Unit.A)
                        .met(
                                "shortCircuit.island.cannotExceed",
                                place,
                                source,
                                current,
                                amount(ampacityA, Unit.A),
                                dark);
                return;
            }
            if (device != null) {
                draft.on(device.facts())
                        .met(
                                "shortCircuit.island.device",
                                place,
                                source,
                                current,
                                name(device.holder()),
                                amount(ampacityA, Unit.A));
                return;
            }
        }
        byTime(studies, fed, fault, largestA, overload, draft, judging.trace());
    }

    /** A device between source and cable that protects against overload too (435.1). */
    private static @Nullable Upstream findWithin(IslandFault fault, double ampacityA) {
        for (Upstream device : fault.devices()) {
            Double ratedA = device.device().ratedCurrentA();
            if (ratedA != null && ratedA <= ampacityA) return device;
        }
        return null;
    }

    private static void byTime(
            ProtectionStudies studies,
            Fed fed,
            IslandFault fault,
            double largestA,
            Overload overload,
            Judging.Draft draft,
            Trace trace) {
        Cable cable = fed.cable();
        FaultCourses faults = studies.faults();
        draft.on(fed.fact("cable.crossSectionMm2"));
        if (faults == null || cable == null || cable.crossSectionMm2() == null) {
            draft.openFor(fed.fact("cable.crossSectionMm2"));
            return;
        }
        IslandFault.End end = fault.end(faults);
        double bornA2s = FaultHeat.withstandA2s(studies.tables(), cable, cable.crossSectionMm2());
        double limitS = FaultHeat.longestS(bornA2s, largestA);
        trace.line("calculation.shortCircuit.longest", amount(bornA2s, Unit.A2S), amount(limitS, Unit.S));
        draft.measure(end.endS(), limitS, Unit.S);
        PhraseArg[] said = {
            name(fed.id()),
            name(fault.source()),
            amount(largestA, Unit.A),
            amount(end.endS(), Unit.S),
            amount(limitS, Unit.S),
            count(fault.dark(studies.installation()).size())
        };
        List<FactId> missing = new ArrayList<>(end.missing());
        if (overload.ampacityA() == null) missing.addAll(overload.missing());
        if (end.endS() <= limitS) draft.met("shortCircuit.island.inTime", said);
        else if (!missing.isEmpty()) draft.openFor(missing);
        else draft.notMet("shortCircuit.island.late", said);
    }
}
