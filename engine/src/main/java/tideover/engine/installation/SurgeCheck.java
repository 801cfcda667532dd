package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.Board;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.SurgeProtection;
import tideover.engine.site.ThingId;

/**
 * A surge protective device stands at the origin (IEC 60364-4-44, 443.4), and a further one in each board of the island
 * that lies more conductor behind the last than one protects (IEC 60364-5-53, 534.4.9). The converters of an island are
 * what surges destroy first.
 */
final class SurgeCheck implements Check<Installation> {

    /** Answers of the rule book. */
    private enum Demand {
        REQUIRED,
        NOT_NEEDED
    }

    @Override
    public String id() {
        return "surge.protection";
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        if (installation.inverters().isEmpty()) return;
        Optional<Limit> origin = judging.limit("surge.origin");
        Optional<Limit> distance = judging.limit("surge.distanceM");
        Judging.Draft draft = judging.at(ThingId.SUPPLY);
        if (origin.isEmpty() || distance.isEmpty()) {
            draft.openForLimit("surge.origin");
            return;
        }
        atOrigin(installation, origin.get(), distance.get().requireNumber(), draft.by(origin.get()));
        for (Board board : installation.boards())
            if (installation.staysOn(board)) furtherOn(installation, board, distance.get(), judging);
    }

    private static void atOrigin(Installation installation, Limit limit, double reachM, Judging.Draft draft) {
        List<FactId> unknown = new ArrayList<>();
        for (Board board : installation.boards()) {
            if (!isAtOrigin(installation, board, reachM)) continue;
            draft.on(board.fact("surgeProtection"));
            if (has(board)) {
                draft.met("surge.protection.met", name(board.id()));
                return;
            }
            if (board.surgeProtection() == null) unknown.add(board.fact("surgeProtection"));
        }
        if (limit.is(Demand.NOT_NEEDED)) draft.notApplicable("surge.protection.notNeeded");
        else if (!unknown.isEmpty()) draft.openFor(unknown);
        else draft.notMet("surge.protection.none");
    }

    /** The first board, and one so near behind it that a device there protects it too. */
    private static boolean isAtOrigin(Installation installation, Board board, double reachM) {
        double lengthM = 0;
        for (ThingId id : installation.wayFromSupply(board.id())) {
            Fed fed = installation.findFed(id).orElse(null);
            if (fed == null) return true;
            if (fed != board && fed instanceof Board && lengthM > reachM) return false;
            Double ownM = lengthM(fed);
            lengthM += ownM == null ? Double.POSITIVE_INFINITY : ownM;
        }
        return true;
    }

    private static void furtherOn(Installation installation, Board board, Limit limit, Judging judging) {
        if (has(board)) return;
        Judging.Draft draft = judging.at(board.id()).by(limit).on(board.fact("surgeProtection"));
        double lengthM = 0;
        for (ThingId id : installation.wayFromSupply(board.id())) {
            Fed fed = installation.findFed(id).orElse(null);
            // Without one nearer to the origin, the finding there says so.
            if (fed == null) return;
            if (fed instanceof Board before && fed != board && has(before)) break;
            Double ownM = lengthM(fed);
            if (fed.cable() != null) draft.on(fed.fact("cable.lengthM"));
            if (ownM == null) {
                draft.openFor(fed.fact("cable.lengthM"));
                return;
            }
            lengthM += ownM;
        }
        draft.measure(lengthM, limit.requireNumber(), Unit.M);
        if (lengthM <= limit.requireNumber())
            draft.met("surge.protection.near", name(board.id()), amount(lengthM, Unit.M));
        else if (board.surgeProtection() == null) draft.openFor(board.fact("surgeProtection"));
        else
            draft.notMet(
                    "surge.protection.far",
                    name(board.id()),
                    amount(lengthM, Unit.M),
                    amount(limit.requireNumber(), Unit.M));
    }

    private static boolean has(Board board) {
        return board.surgeProtection() != null && board.surgeProtection() != SurgeProtection.NONE;
    }

    /** Length of a thing's supply cable [m]: 0 where it has none, nothing where it is not known. */
    private static @Nullable Double lengthM(Fed fed) {
        return fed.cable() == null ? Double.valueOf(0) : fed.cable().lengthM();
    }
}
