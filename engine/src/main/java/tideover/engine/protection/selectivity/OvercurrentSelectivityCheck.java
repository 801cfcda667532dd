package tideover.engine.protection.selectivity;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.count;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.names;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.network.Upstream;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.protection.selectivity.SelectiveLimit.Beyond;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.Supply;
import tideover.engine.site.ThingId;

/**
 * On a short circuit only the overcurrent device nearest to it opens (IEC 60364-5-53, 536.4.1). Judged once for each device
 * that has others behind it, by the one it is least selective with; and once for each island source, which may stop before
 * any of them.
 */
final class OvercurrentSelectivityCheck implements Check<ProtectionStudies> {

    private static final String LIMIT = "selectivity.overcurrent";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Installation installation = studies.installation();
        Optional<Limit> limit = judging.limit(LIMIT);
        devicesByTheOneBefore(installation).forEach((before, behind) -> {
            Judging.Draft draft = judging.at(before.holder(), OperatingState.CONNECTED);
            if (limit.isEmpty()) draft.openForLimit(LIMIT);
            else connected(studies, before, behind, draft.by(limit.get()));
        });
        for (Inverter inverter : installation.formingInverters()) {
            Judging.Draft draft = judging.at(inverter.id(), OperatingState.ISLAND_GRID_DEAD);
            if (limit.isEmpty()) draft.openForLimit(LIMIT);
            else islanded(studies, inverter, draft.by(limit.get()));
        }
    }

    /** The devices that the plan or island operation touches, by the next one before each. */
    private static Map<Upstream, List<Upstream>> devicesByTheOneBefore(Installation installation) {
        Map<Upstream, List<Upstream>> behind = new LinkedHashMap<>();
        for (Fed fed : installation.all(Fed.class)) {
            ThingId from = fed.fedFrom();
            OvercurrentDevice own = fed.protection();
            if (own == null || from == null || !installation.isTouched(fed)) continue;
            Upstream.find(installation, from)
                    .ifPresent(before -> behind.computeIfAbsent(before, b -> new ArrayList<>())
                            .add(new Upstream(fed.id(), Upstream.Slot.PROTECTION, own)));
        }
        return behind;
    }

    private static void connected(
            ProtectionStudies studies, Upstream before, List<Upstream> behind, Judging.Draft draft) {
        Supply supply = studies.installation().supply();
        Double prospectiveA = largestA(studies, behind);
        draft.on(supply.fact("prospectiveCurrentA")).on(before.facts());
        List<FactId> missing = new ArrayList<>(missing(studies, before));
        for (Upstream device : behind) {
            draft.on(device.facts());
            missing.addAll(missing(studies, device));
        }
        Worst worst = worst(studies, before, behind, prospectiveA).orElse(null);
        boolean decides = worst != null && worst.limit().currentA() != Double.POSITIVE_INFINITY;
        if (decides && prospectiveA == null) missing.add(supply.fact("prospectiveCurrentA"));
        if (worst != null && prospectiveA != null && worst.limit().currentA() < prospectiveA)
            below(before, worst, prospectiveA, draft);
        else if (worst == null || !missing.isEmpty()) draft.openFor(missing);
        else if (prospectiveA == null) draft.met("selectivity.overcurrent.met.any", name(before.holder()));
        else
            draft.met(
                    "selectivity.overcurrent.met",
                    name(before.holder()),
                    amount(prospectiveA, Unit.A),
                    name(worst.behind().holder()));
    }

    /** Largest current at any of the devices, what inverters add included; where it is not computed, that of the supply. */
    private static @Nullable Double largestA(ProtectionStudies studies, List<Upstream> behind) {
        Double suppliedA = studies.installation().supply().prospectiveCurrentA();
        if (studies.faults() == null || suppliedA == null) return suppliedA;
        double largestA = 0;
        for (Upstream device : behind) {
            ThingId from = studies.installation()
                    .findFed(device.holder())
                    .map(Fed::fedFrom)
                    .orElse(ThingId.SUPPLY);
            largestA = Math.max(
                    largestA,
                    studies.faults()
                            .findLargestA(from, OperatingState.CONNECTED)
                            .orElse(suppliedA));
        }
        return largestA;
    }

    /** The pair with the lowest limit, and how many more share it. */
    private record Worst(Upstream behind, SelectiveLimit limit, int more) {}

    private static Optional<Worst> worst(
            ProtectionStudies studies, Upstream before, List<Upstream> behind, @Nullable Double prospectiveA) {
        Selectivity selectivity = new Selectivity(studies.tables());
        Worst worst = null;
        for (Upstream device : behind) {
            SelectiveLimit limit = selectivity
                    .limit(device.device(), before.device(), prospectiveA == null ? 0 : prospectiveA)
                    .orElse(null);
            if (limit == null) continue;
            if (worst == null || limit.currentA() < worst.limit().currentA()) worst = new Worst(device, limit, 0);
            else if (limit.currentA() == worst.limit().currentA())
                worst = new Worst(worst.behind(), worst.limit(), worst.more() + 1);
        }
        return Optional.ofNullable(worst);
    }

    private static List<FactId> missing(ProtectionStudies studies, Upstream device) {
        return studies.tables().tripCurves().find(device.device()).isPresent() ? List.of() : device.missingForCurve();
    }

    private static void below(Upstream before, Worst worst, double prospectiveA, Judging.Draft draft) {
        double limitA = worst.limit().currentA();
        PhraseArg[] said = {
            name(before.holder()),
            name(worst.behind().holder()),
            amount(limitA, Unit.A),
            amount(prospectiveA, Unit.A),
            count(worst.more())
        };
        if (limitA > 0) draft.measure(limitA, prospectiveA, Unit.A);
        if (limitA == 0) draft.notMet("selectivity.overcurrent.tooClose", said);
        else if (worst.limit().beyond() == Beyond.BOTH_OPEN) draft.notMet("selectivity.overcurrent.atOnce", said);
        else draft.notCertain("selectivity.overcurrent.notCertain", said);
    }

    private static void islanded(ProtectionStudies studies, Inverter inverter, Judging.Draft draft) {
        List<FactId> missing = IslandShortCircuit.missing(inverter);
        if (!missing.isEmpty()) {
            draft.openFor(missing);
            return;
        }
        IslandShortCircuit fault = IslandShortCircuit.of(studies.installation(), studies.tables(), inverter);
        PhraseArg[] said = {
            name(inverter.id()),
            amount(fault.currentA(), Unit.A),
            amount(fault.stopsS(), Unit.S),
            names(fault.alone()),
            names(fault.notAlone()),
            names(fault.stopping())
        };
        draft.on(fault.facts());
        if (!fault.notAlone().isEmpty()) draft.notMet("selectivity.overcurrent.island.notAlone", said);
        else if (!fault.missing().isEmpty()) draft.openFor(fault.missing());
        else if (fault.alone().isEmpty()) draft.notApplicable("selectivity.overcurrent.island.stops", said);
        else if (fault.stopping().isEmpty()) draft.met("selectivity.overcurrent.island.met", said);
        else draft.met("selectivity.overcurrent.island.some", said);
    }
}
