package tideover.engine.protection.residual;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.LoadKind;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Status;

/**
 * Socket-outlets up to 32 A, and luminaires where demanded, have an RCD of 30 mA on their way in every state
 * (IEC 60364-4-41, 411.3.3 and 411.3.4). An unaltered circuit keeps in the island what it has when connected.
 */
final class AdditionalProtectionCheck implements Check<ProtectionStudies> {

    /** Answers of the rule book. */
    private enum Demand {
        REQUIRED
    }

    @Override
    public String id() {
        return "rcd.additional";
    }

    @Override
    public OnAssumption onAssumption() {
        return Rcds.ON_ASSUMPTION;
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Installation installation = studies.installation();
        Optional<Limit> limit = judging.limit("rcd.additional.socketsA");
        for (Circuit circuit : installation.circuits()) {
            if (!installation.isTouched(circuit) || !concerns(circuit, judging)) continue;
            if (limit.isEmpty()) judging.at(circuit.id()).openForLimit("rcd.additional.socketsA");
            else if (!installation.gaps(circuit).isEmpty())
                judging.at(circuit.id()).by(limit.get()).openFor(installation.gaps(circuit));
            else judge(installation, circuit, limit.get(), judging);
        }
    }

    private static boolean concerns(Circuit circuit, Judging judging) {
        LoadKind kind = kind(circuit);
        if (kind == null) return true;
        if (kind == LoadKind.LIGHTING)
            return judging.limit("rcd.additional.lighting")
                    .map(limit -> limit.is(Demand.REQUIRED))
                    .orElse(true);
        if (kind != LoadKind.SOCKETS) return false;
        Double ratedA =
                circuit.protection() == null ? null : circuit.protection().ratedCurrentA();
        double upToA = judging.limit("rcd.additional.socketsUpToA")
                .map(Limit::requireNumber)
                .orElse(Double.POSITIVE_INFINITY);
        return ratedA == null || ratedA <= upToA;
    }

    private static void judge(Installation installation, Circuit circuit, Limit limit, Judging judging) {
        if (circuit.has(Conductor.PEN) && installation.staysOn(circuit)) {
            judging.at(circuit.id(), OperatingState.CONNECTED)
                    .by(limit)
                    .on(circuit.fact("conductors"))
                    .notMet("rcd.additional.pen", name(circuit.id()));
            return;
        }
        double limitA = limit.requireNumber();
        boolean asInstalled = installation.status(circuit.id()) == Status.EXISTING
                && !judging.limit("rcd.stayingCircuits")
                        .map(l -> l.is(Demand.REQUIRED))
                        .orElse(true);
        Fed connected = best(installation, circuit, OperatingState.CONNECTED, limitA);
        if (asInstalled && (connected == null || isAbove(connected, limitA))) {
            judging.at(circuit.id()).by(limit).notApplicable("rcd.additional.asInstalled", name(circuit.id()));
            return;
        }
        for (OperatingState state : Rcds.liveStates(installation, circuit)) {
            Fed holder = best(installation, circuit, state, limitA);
            if (holder != null && isWithin(holder, limitA)) continue;
            conclude(circuit, holder, judging.at(circuit.id(), state).by(limit), limitA, state);
            return;
        }
        if (connected == null) return;
        Double ratedA = Rcds.device(connected).ratedResidualCurrentA();
        judging.at(circuit.id())
                .by(limit)
                .on(connected.fact("rcd.ratedResidualCurrentA"))
                .met(
                        "rcd.additional.met",
                        name(circuit.id()),
                        name(connected.id()),
                        amount(ratedA == null ? limitA : ratedA, Unit.RESIDUAL_A));
    }

    private static void conclude(
            Circuit circuit, @Nullable Fed holder, Judging.Draft draft, double limitA, OperatingState state) {
        Double ratedA = holder == null ? null : Rcds.device(holder).ratedResidualCurrentA();
        if (holder != null && ratedA == null) {
            draft.openFor(holder.fact("rcd.ratedResidualCurrentA"));
        } else if (kind(circuit) == null) {
            draft.openFor(circuit.fact("load.kind"));
        } else if (holder == null || ratedA == null) {
            draft.notMet("rcd.additional.none", name(circuit.id()), word(state));
        } else {
            draft.on(holder.fact("rcd.ratedResidualCurrentA"))
                    .measure(ratedA, limitA, Unit.RESIDUAL_A)
                    .notMet(
                            "rcd.additional.above",
                            name(circuit.id()),
                            name(holder.id()),
                            amount(ratedA, Unit.RESIDUAL_A),
                            word(state));
        }
    }

    /** A device on the way that is sensitive enough, else one that may be, else the most sensitive; none works behind a PEN. */
    private static @Nullable Fed best(Installation installation, Circuit circuit, OperatingState state, double limitA) {
        if (circuit.has(Conductor.PEN)) return null;
        Fed best = null;
        for (Fed holder : Rcds.onWay(installation, circuit, state)) {
            if (isWithin(holder, limitA)) return holder;
            if (best == null || isAbove(best, ratedA(holder))) best = holder;
        }
        return best;
    }

    private static boolean isWithin(Fed holder, double limitA) {
        Double ratedA = Rcds.device(holder).ratedResidualCurrentA();
        return ratedA != null && ratedA <= limitA;
    }

    private static boolean isAbove(Fed holder, double limitA) {
        Double ratedA = Rcds.device(holder).ratedResidualCurrentA();
        return ratedA != null && ratedA > limitA;
    }

    /** Unknown counts as the most sensitive: it may be. */
    private static double ratedA(Fed holder) {
        Double ratedA = Rcds.device(holder).ratedResidualCurrentA();
        return ratedA == null ? 0 : ratedA;
    }

    private static @Nullable LoadKind kind(Circuit circuit) {
        return circuit.load() == null ? null : circuit.load().kind();
    }
}
