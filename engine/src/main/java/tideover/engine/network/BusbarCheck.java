package tideover.engine.network;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.Board;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PerLine;
import tideover.engine.site.Status;

/**
 * The device before a board passes its rated current and inverters behind that device add theirs; the busbar bears both
 * together (IEC 60364-5-551, 551.7.2). What feeds in before the device is limited by it.
 */
final class BusbarCheck implements Check<NetworkStudies> {

    @Override
    public String id() {
        return "overload.busbar";
    }

    @Override
    public void judge(NetworkStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit("overload.busbar");
        Installation installation = studies.installation();
        for (Board board : installation.boards()) {
            Optional<Upstream> before = Upstream.find(installation, board.id());
            List<Inverter> feeding =
                    before.map(b -> feedingWith(installation, b)).orElse(List.of());
            if (before.isEmpty() || feeding.isEmpty() || passesThrough(installation, board)) continue;
            if (!isTouched(installation, board, feeding)) continue;
            Judging.Draft draft = judging.at(board.id(), OperatingState.CONNECTED);
            if (limit.isEmpty() || studies.demand() == null) draft.openForLimit("overload.busbar");
            else judge(studies.demand(), board, before.get(), feeding, draft.by(limit.get()));
        }
    }

    /** Inverters whose current does not pass the device. */
    private static List<Inverter> feedingWith(Installation installation, Upstream before) {
        return installation.inverters().stream()
                .filter(inverter -> !inverter.id().equals(before.holder())
                        && installation.isBehind((Fed) inverter, before.holder()))
                .toList();
    }

    /** Nothing is drawn at a board with one way on, such as a meter panel: what comes from one side leaves on the other. */
    private static boolean passesThrough(Installation installation, Board board) {
        return installation.all(Fed.class).stream()
                        .filter(fed -> board.id().equals(fed.fedFrom()))
                        .count()
                < 2;
    }

    private static boolean isTouched(Installation installation, Board board, List<Inverter> feeding) {
        return installation.isTouched(board)
                || feeding.stream().anyMatch(inverter -> installation.status(inverter.id()) != Status.EXISTING);
    }

    private static void judge(
            Demand demand, Board board, Upstream before, List<Inverter> feeding, Judging.Draft draft) {
        List<FactId> missing = new ArrayList<>(0);
        draft.on(before.ratedCurrent()).on(board.fact("busbarRatedCurrentA"));
        Double beforeA = before.device().ratedCurrentA();
        Double busbarA = board.busbarRatedCurrentA();
        if (beforeA == null) missing.add(before.ratedCurrent());
        if (busbarA == null) missing.add(board.fact("busbarRatedCurrentA"));
        PerLine fedA = PerLine.ZERO;
        for (Inverter inverter : feeding) {
            draft.on(inverter.fact("feedInPowerW"));
            Optional<PerLine> own = demand.findFeedInA(inverter);
            if (own.isEmpty()) missing.add(inverter.fact("feedInPowerW"));
            fedA = fedA.plus(own.orElse(PerLine.ZERO));
        }
        if (beforeA == null || busbarA == null) {
            draft.openFor(missing);
            return;
        }
        double sumA = beforeA + fedA.largest();
        draft.measure(sumA, busbarA, Unit.A);
        if (sumA > busbarA)
            draft.notMet(
                    "overload.busbar.above",
                    name(board.id()),
                    amount(beforeA, Unit.A),
                    name(before.holder()),
                    amount(fedA.largest(), Unit.A),
                    amount(sumA, Unit.A),
                    amount(busbarA, Unit.A));
        else if (!missing.isEmpty()) draft.openFor(missing);
        else draft.met("overload.busbar.met", name(board.id()), amount(sumA, Unit.A), amount(busbarA, Unit.A));
    }
}
