package tideover.engine.protection;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.Comparator;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Board;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.LoadKind;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/**
 * A fault from line to PE is cleared within the time of Table 41.1, 411.3.2.3 or 411.3.2.4, fed by the grid and fed by an
 * island source; where no device can, the source's own shut-down counts (IEC 60364-4-41, 411.3.2 and 419).
 */
final class DisconnectionCheck implements Check<ProtectionStudies> {

    private static final double NOMINAL_VOLTAGE_V = 230;

    /** What feeds a fault. */
    private enum Feeding {
        GRID,
        ISLAND_SOURCE
    }

    /** The worst story of one mode. */
    private record Worst(OperatingState state, FaultStory story) {}

    @Override
    public String id() {
        return "fault.disconnection";
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Installation installation = studies.installation();
        for (Thing thing : installation.things()) {
            if (!(thing instanceof Fed fed) || !concerns(installation, fed)) continue;
            if (studies.faults() == null) {
                judging.at(fed.id()).openForLimit("fault.voltageFactor");
            } else if (installation.supply().earthingSystem() == null) {
                judging.at(fed.id()).openFor(installation.supply().fact("earthingSystem"));
            } else if (!installation.gaps(fed).isEmpty()) {
                judging.at(fed.id()).openFor(installation.gaps(fed));
            } else {
                Worst fromGrid = worst(studies.faults(), installation, fed, Feeding.GRID);
                Worst fromIsland = worst(studies.faults(), installation, fed, Feeding.ISLAND_SOURCE);
                if (fromGrid != null) judge(studies, studies.faults(), fed, fromGrid, judging);
                if (fromIsland != null) judge(studies, studies.faults(), fed, fromIsland, judging);
            }
        }
    }

    /** Circuits, feeders with a cable of their own and inverter cables that island operation touches and that have a PE. */
    private static boolean concerns(Installation installation, Fed fed) {
        boolean kind = fed instanceof Circuit || fed instanceof Inverter || fed instanceof Board && fed.cable() != null;
        boolean protective = fed.conductors() == null || fed.has(Conductor.PE) || fed.has(Conductor.PEN);
        return kind && protective && installation.isTouched(fed);
    }

    private static @Nullable Worst worst(FaultStudy faults, Installation installation, Fed fed, Feeding by) {
        Worst worst = null;
        for (OperatingState state : installation.states())
            for (FaultStory story : faults.lineToEarth(fed, state)) {
                if (story.source().equals(ThingId.SUPPLY) != (by == Feeding.GRID)) continue;
                if (worst == null || SLOWER.compare(story, worst.story()) > 0) worst = new Worst(state, story);
            }
        return worst;
    }

    private static final Comparator<FaultStory> SLOWER = Comparator.comparingDouble(
                    (FaultStory story) -> story.clearing().latestS())
            .thenComparing(story -> story.clearing() instanceof Clearing.Never)
            .thenComparingDouble(story -> -story.currentA());

    private static void judge(ProtectionStudies studies, FaultStudy faults, Fed fed, Worst worst, Judging judging) {
        FaultStory story = worst.story();
        CircuitRole role = role(fed, judging);
        EarthingSystem system = story.system() == EarthingSystem.TT ? EarthingSystem.TT : EarthingSystem.TN_S;
        Double nominalV = studies.installation().supply().nominalVoltageV();
        DisconnectionTimes.Row row = studies.tables()
                .disconnectionTimes()
                .require(system, nominalV == null ? NOMINAL_VOLTAGE_V : nominalV, role);
        faults.explain(story, fed, worst.state(), judging.trace());
        judging.trace().line("calculation.fault.limit", word(system), word(role), amount(row.timeS(), Unit.S));
        Judging.Draft draft = judging.at(fed.id(), worst.state())
                .by(row.source())
                .on(story.facts())
                .measure(story.clearing().latestS(), row.timeS(), Unit.S);
        // Without any earth of its neutral a source drives no fault current: the law of the link says so, once.
        if (!studies.installation().in(worst.state()).isEarthed(story.source()))
            draft.notApplicable("fault.disconnection.unearthed", name(fed.id()), name(story.source()));
        else conclude(story, fed, row.timeS(), draft);
    }

    private static void conclude(FaultStory story, Fed fed, double limitS, Judging.Draft draft) {
        PhraseArg current = amount(story.currentA(), Unit.A);
        PhraseArg limit = amount(limitS, Unit.S);
        boolean inTime = story.clearing().latestS() <= limitS;
        if (!inTime && !story.missing().isEmpty()) {
            draft.openFor(story.missing());
        } else if (!inTime && story.asRead().latestS() <= limitS) {
            draft.notCertain(
                    "fault.disconnection.notCertain",
                    name(fed.id()),
                    amount(story.asRead().latestS(), Unit.S),
                    limit);
        } else if (story.clearing() instanceof Clearing.ByDevice by) {
            PhraseArg[] said = {name(fed.id()), current, name(by.device()), amount(by.latestS(), Unit.S), limit};
            String how = by.kind() == Clearing.DeviceKind.RESIDUAL_CURRENT ? "residual" : "overcurrent";
            if (inTime) draft.met("fault.disconnection.met." + how, said);
            else draft.notMet("fault.disconnection.late." + how, said);
        } else if (story.clearing() instanceof Clearing.BySourceShutdown by) {
            PhraseArg[] said = {
                name(fed.id()),
                current,
                name(by.source()),
                amount(by.latestS(), Unit.S),
                limit,
                amount(by.voltageLeftV(), Unit.V)
            };
            if (inTime) draft.met("fault.disconnection.met.shutdown", said);
            else draft.notMet("fault.disconnection.late.shutdown", said);
        } else if (story.loopOhm() == Double.POSITIVE_INFINITY) {
            draft.notMet("fault.disconnection.noReturn", name(fed.id()), name(story.source()), limit);
        } else {
            draft.notMet("fault.disconnection.never", name(fed.id()), name(story.source()), current, limit);
        }
    }

    /** Which time holds (411.3.2.2 to 411.3.2.4); a circuit whose rating is not known has the shorter one. */
    private static CircuitRole role(Fed fed, Judging judging) {
        if (!(fed instanceof Circuit circuit)) return CircuitRole.DISTRIBUTION;
        boolean sockets = circuit.load() == null
                || circuit.load().kind() == null
                || circuit.load().kind() == LoadKind.SOCKETS
                || circuit.load().kind() == LoadKind.SUB_SUPPLY;
        String id = sockets ? "fault.finalSocketsUpToA" : "fault.finalFixedUpToA";
        double upToA = judging.limit(id).map(Limit::requireNumber).orElse(Double.POSITIVE_INFINITY);
        Double ratedA =
                circuit.protection() == null ? null : circuit.protection().ratedCurrentA();
        return ratedA == null || ratedA <= upToA ? CircuitRole.FINAL : CircuitRole.DISTRIBUTION;
    }
}
