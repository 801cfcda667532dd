package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Board;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.Isolator;
import tideover.engine.site.Meter;
import tideover.engine.site.MeterRole;
import tideover.engine.site.Notice;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** Notices of a second source stand at the origin, the meter, the boards it feeds and every isolating point. */
final class NoticeCheck implements Check<Installation> {

    @Override
    public String id() {
        return "notice.present";
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        if (installation.inverters().isEmpty()) return;
        Map<ThingId, Notice> noticed = new HashMap<>();
        for (Notice notice : installation.all(Notice.class)) if (notice.at() != null) noticed.put(notice.at(), notice);
        List<FactId> unplaced = installation.all(Notice.class).stream()
                .filter(notice -> notice.at() == null)
                .map(notice -> notice.fact("at"))
                .toList();
        places(installation).forEach((place, limitId) -> {
            Judging.Draft draft = judging.at(place);
            Optional<Limit> limit = judging.limit(limitId);
            if (limit.isEmpty()) draft.openForLimit(limitId);
            else if (noticed.containsKey(place))
                draft.by(limit.get()).on(noticed.get(place).fact("at")).met("notice.present.met", name(place));
            else if (!unplaced.isEmpty()) draft.by(limit.get()).openFor(unplaced);
            else draft.by(limit.get()).notMet("notice.present.none", name(place));
        });
    }

    private static Map<ThingId, String> places(Installation installation) {
        Map<ThingId, String> places = new LinkedHashMap<>();
        places.put(ThingId.SUPPLY, "notice.origin");
        for (Thing thing : installation.things()) {
            if (thing instanceof Meter meter && meter.role() == MeterRole.OPERATOR)
                places.put(meter.id(), "notice.meter");
            if (thing instanceof Board board && (installation.staysOn(board) || hasInverter(installation, board)))
                places.put(board.id(), "notice.board");
            if (thing instanceof Isolator isolator) places.put(isolator.id(), "notice.isolators");
        }
        return places;
    }

    private static boolean hasInverter(Installation installation, Board board) {
        for (Inverter inverter : installation.inverters()) if (board.id().equals(inverter.fedFrom())) return true;
        return false;
    }
}
