package tideover.engine.installation.bus;

import static tideover.engine.rules.PhraseArg.amount;

import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;
import tideover.engine.site.BusPort;
import tideover.engine.site.FactId;

/** A round of questions to all servers, one of which may stay unanswered, is over within what the client needs. */
final class BudgetCheck implements Check<BusStudies> {

    private static final String LIMIT = "bus.budget";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(BusStudies bus, Judging judging) {
        for (BusLine line : bus.lines())
            for (BusPort client : line.clients()) judge(new PollRound(client, line.servers()), judging);
        for (BusPort client : bus.networkClients()) judge(new PollRound(client, bus.networkServers()), judging);
    }

    private static void judge(PollRound round, Judging judging) {
        if (round.servers().isEmpty()) return;
        BusPort client = round.client();
        Optional<Limit> limit = judging.limit(LIMIT);
        Judging.Draft draft = judging.at(client.id());
        if (limit.isEmpty()) {
            draft.openForLimit(LIMIT);
            return;
        }
        draft.by(limit.get()).on(round.facts());
        List<FactId> missing = round.missing();
        Double neededS = client.responseNeededS();
        if (!missing.isEmpty() || neededS == null) {
            draft.openFor(missing);
            return;
        }
        double roundS = round.lengthS();
        round.trace(judging.trace());
        draft.measure(roundS, neededS, Unit.S);
        if (roundS > neededS)
            draft.notMet("bus.budget.above", Devices.of(client), amount(roundS, Unit.S), amount(neededS, Unit.S));
        else draft.met("bus.budget.met", Devices.of(client), amount(roundS, Unit.S), amount(neededS, Unit.S));
    }
}
