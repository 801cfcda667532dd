package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.names;
import static tideover.engine.rules.PhraseArg.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/**
 * A circuit's neutral lies on the side of its lines: in every state it leads back to the source that feeds them, through
 * the same RCDs.
 */
final class NeutralSideCheck implements Check<Installation> {

    @Override
    public String id() {
        return "neutral.side";
    }

    @Override
    public OnAssumption onAssumption() {
        return OnAssumption.STAYS_OPEN;
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        Optional<Limit> limit = judging.limit("neutral.side");
        for (Circuit circuit : installation.circuits()) {
            // Without a neutral only where somebody has looked.
            if (circuit.conductors() != null && !circuit.has(Conductor.N) && !circuit.has(Conductor.PEN)) continue;
            if (limit.isEmpty()) judging.at(circuit.id()).openForLimit("neutral.side");
            else if (!installation.gaps(circuit).isEmpty())
                judging.at(circuit.id()).by(limit.get()).openFor(installation.gaps(circuit));
            else judge(installation, circuit, limit.get(), judging);
        }
    }

    private static void judge(Installation installation, Circuit circuit, Limit limit, Judging judging) {
        OperatingState differing = null;
        List<ThingId> passed = List.of();
        View before = null;
        ThingId sourceBefore = null;
        // The states in which it does most harm come first.
        for (OperatingState state : List.of(
                OperatingState.ISLAND_GRID_WAITING,
                OperatingState.ISLAND_GRID_DEAD,
                OperatingState.BY_PASSED,
                OperatingState.CONNECTED)) {
            if (!installation.states().contains(state)) continue;
            View view = installation.in(state);
            ThingId source = view.findSource(circuit).orElse(null);
            if (source == null) continue;
            // Fed by the same source with all contacts in the same position it is the same again.
            if (before != null && view.hasContactsOf(before) && source.equals(sourceBefore)) continue;
            before = view;
            sourceBefore = source;
            Path neutral = view.findNeutralPath(source, circuit.id()).orElse(null);
            if (neutral == null) {
                if (!isOnOtherSide(view, circuit, source)) continue;
                draft(circuit, limit, judging, state)
                        .notMet("neutral.side.other", name(circuit.id()), name(source), word(state));
                return;
            }
            List<ThingId> odd = rcdsOfOneOnly(view, circuit, source, neutral);
            if (!odd.isEmpty() && differing == null) {
                differing = state;
                passed = odd;
            }
        }
        if (differing == null)
            judging.at(circuit.id()).by(limit).on(facts(circuit)).met("neutral.side.met", name(circuit.id()));
        else draft(circuit, limit, judging, differing).notMet("neutral.side.rcd", name(circuit.id()), names(passed));
    }

    private static Judging.Draft draft(Circuit circuit, Limit limit, Judging judging, OperatingState state) {
        return judging.at(circuit.id(), state).by(limit).on(facts(circuit));
    }

    private static List<FactId> facts(Circuit circuit) {
        return List.of(
                circuit.fact("fedFrom"), circuit.fact(circuit.neutralFrom() == null ? "fedFrom" : "neutralFrom"));
    }

    /** Whether the neutral belongs to another source's; one that belongs to none is interrupted, another rule. */
    private static boolean isOnOtherSide(View view, Circuit circuit, ThingId source) {
        return view.findNeutralGroup(circuit.id())
                .map(group -> group.isHeld(view) && !group.sources().contains(source))
                .orElse(false);
    }

    /** RCDs that see the line but not the neutral, or the neutral but not the line. */
    private static List<ThingId> rcdsOfOneOnly(View view, Circuit circuit, ThingId source, Path neutral) {
        Path line = view.findLinePath(
                        source, circuit.id(), view.liveLines(circuit).get(0))
                .orElseThrow();
        List<Fed> lineRcds = line.rcds();
        List<Fed> neutralRcds = neutral.rcds();
        List<ThingId> odd = new ArrayList<>(0);
        for (Fed rcd : lineRcds) if (!holds(neutralRcds, rcd.id())) odd.add(rcd.id());
        for (Fed rcd : neutralRcds) if (!holds(lineRcds, rcd.id())) odd.add(rcd.id());
        return odd;
    }

    private static boolean holds(List<Fed> rcds, ThingId id) {
        for (Fed rcd : rcds) if (rcd.id().equals(id)) return true;
        return false;
    }
}
