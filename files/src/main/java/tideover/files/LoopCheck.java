package tideover.files;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Fed;
import tideover.engine.site.ThingId;
import tideover.files.Reference.Side;
import tideover.files.Statements.Stated;
import tideover.files.yaml.Spot;

/**
 * Whether the lines, and the neutrals, lead back to the supply and not round in a circle: as found, once the plan is done,
 * and as built. A neutral may begin elsewhere than the lines, so each way is followed by itself.
 */
final class LoopCheck {
    private final Statements statements;
    private final Problems problems;
    private final Set<Set<ThingId>> said = new HashSet<>();

    LoopCheck(Statements statements, Problems problems) {
        this.statements = statements;
        this.problems = problems;
    }

    void check() {
        for (Side side : Side.values()) {
            Map<ThingId, ThingId> lines = new HashMap<>();
            Map<ThingId, ThingId> neutrals = new HashMap<>();
            for (ThingId id : statements.ids(side)) {
                if (statements.removedBy(id, side) != null) continue;
                List<Stated> stated = statements.latestFirst(id, side);
                ThingId line = first(stated, Fed::fedFrom);
                ThingId neutral = first(stated, Fed::neutralFrom);
                put(lines, id, line);
                put(neutrals, id, neutral == null ? line : neutral);
            }
            walk(lines, ProblemKind.LOOP_OF_LINES);
            walk(neutrals, ProblemKind.LOOP_OF_NEUTRALS);
        }
    }

    private static void put(Map<ThingId, ThingId> ways, ThingId from, @Nullable ThingId to) {
        // A thing that names itself is told by the reference check.
        if (to != null && !to.equals(from)) ways.put(from, to);
    }

    private static @Nullable ThingId first(List<Stated> loudestFirst, Function<Fed, @Nullable ThingId> field) {
        for (Stated stated : loudestFirst)
            if (stated.thing() instanceof Fed fed) {
                ThingId named = field.apply(fed);
                if (named != null) return named;
            }
        return null;
    }

    /** Follows each way once; whoever meets its own trail has gone round. */
    private void walk(Map<ThingId, ThingId> ways, ProblemKind kind) {
        Map<ThingId, ThingId> startedBy = new HashMap<>();
        for (ThingId start : ways.keySet()) {
            ThingId at = start;
            while (at != null && !startedBy.containsKey(at)) {
                startedBy.put(at, start);
                at = ways.get(at);
            }
            if (at != null && start.equals(startedBy.get(at))) report(round(at, ways), kind);
        }
    }

    private static List<ThingId> round(ThingId start, Map<ThingId, ThingId> ways) {
        List<ThingId> round = new ArrayList<>();
        ThingId at = start;
        do {
            round.add(at);
            ThingId next = ways.get(at);
            if (next == null) break;
            at = next;
        } while (!at.equals(start));
        return round;
    }

    private void report(List<ThingId> round, ProblemKind kind) {
        if (!said.add(Set.copyOf(round))) return;
        // The last thing stated closed the circle: the plan's rather than the house's.
        ThingId last = round.get(0);
        for (ThingId id : round)
            if (isBehind(way(id, kind).spot(), way(last, kind).spot())) last = id;
        int start = round.indexOf(last);
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < round.size(); i++)
            all.append(round.get((start + i) % round.size())).append(" ← ");
        all.append(last);
        Way way = way(last, kind);
        problems.add(way.spot(), last + "." + way.field(), kind, all.toString());
    }

    private record Way(String field, Spot spot) {}

    /** The statement by which a thing leads on. */
    private Way way(ThingId id, ProblemKind kind) {
        List<String> fields =
                kind == ProblemKind.LOOP_OF_LINES ? List.of("fedFrom") : List.of("neutralFrom", "fedFrom");
        for (String field : fields)
            for (Stated stated : statements.latestFirst(id, Side.BUILT))
                if (stated.node().find(field).isPresent()) return new Way(field, stated.spot(field));
        throw new IllegalStateException(id + " is in a circle but supplied from nowhere");
    }

    private static boolean isBehind(Spot one, Spot other) {
        return one.line() > other.line() || (one.line() == other.line() && one.column() > other.column());
    }
}
