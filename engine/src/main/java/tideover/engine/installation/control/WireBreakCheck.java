package tideover.engine.installation.control;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.ControlPort;
import tideover.engine.site.SignalMeaning;
import tideover.engine.site.Thing;

/** A broken wire leads to the safe side, or something else tells of it. */
final class WireBreakCheck implements Check<ControlWiring> {

    private static final String LIMIT = "control.wireBreak";

    /** A broken wire takes these away: the switch stays closed, the link closes, or either is believed moved. */
    private static final Set<SignalMeaning> UNSAFE_COMMANDS =
            Set.of(SignalMeaning.SWITCH_OPEN, SignalMeaning.LINK_OPEN);

    private static final Set<SignalMeaning> UNSAFE_REPORTS =
            Set.of(SignalMeaning.SWITCH_CLOSED, SignalMeaning.LINK_OPEN);

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(ControlWiring wiring, Judging judging) {
        if (wiring.findLeader().isEmpty()) return;
        Optional<Limit> limit = judging.limit(LIMIT);
        for (Thing device : wiring.devices())
            for (ControlPort command : wiring.commandsOf(device.id())) {
                SignalMeaning meaning = command.onMeans();
                boolean safe = meaning != null && !UNSAFE_COMMANDS.contains(meaning);
                judge(wiring, command, safe, meaning == null ? null : guard(wiring, device), judging, limit);
            }
        for (ControlPort input : wiring.inputs(Meanings.POSITIONS)) {
            SignalMeaning meaning = input.onMeans();
            if (meaning == null) continue;
            ControlPort guard =
                    UNSAFE_REPORTS.contains(meaning) ? firstHeard(wiring, Set.of(Meanings.opposite(meaning))) : null;
            judge(wiring, input, !UNSAFE_REPORTS.contains(meaning), guard, judging, limit);
        }
    }

    /** The input by which the inverter notices that a device has not moved. */
    private static @Nullable ControlPort guard(ControlWiring wiring, Thing device) {
        return firstHeard(wiring, Meanings.of(device));
    }

    private static @Nullable ControlPort firstHeard(ControlWiring wiring, Set<SignalMeaning> meanings) {
        for (ControlPort input : wiring.inputs(meanings)) {
            Drive drive = wiring.findDrive(input).orElse(null);
            if (drive == null) continue;
            for (ControlPort contact : drive.needed())
                if (wiring.findReport(contact).orElse(null) == input.onMeans()) return input;
        }
        return null;
    }

    private static void judge(
            ControlWiring wiring,
            ControlPort port,
            boolean safe,
            @Nullable ControlPort guard,
            Judging judging,
            Optional<Limit> limit) {
        Judging.Draft draft = judging.at(port.id()).on(port.fact("onMeans"));
        SignalMeaning meaning = port.onMeans();
        if (limit.isEmpty()) draft.openForLimit(LIMIT);
        else if (meaning == null) draft.by(limit.get()).openFor(port.fact("onMeans"));
        else if (safe)
            draft.by(limit.get())
                    .met("control.wireBreak.safe", Meanings.terminals(port), Meanings.device(port), word(meaning));
        else if (guard == null && !wiring.gaps().isEmpty())
            draft.by(limit.get()).openFor(wiring.gaps());
        else if (guard != null)
            draft.by(limit.get())
                    .met(
                            "control.wireBreak.guarded",
                            Meanings.terminals(port),
                            Meanings.device(port),
                            word(meaning),
                            Meanings.terminals(guard),
                            Meanings.device(guard));
        else
            draft.by(limit.get())
                    .notMet(
                            "control.wireBreak.unsafe",
                            Meanings.terminals(port),
                            Meanings.device(port),
                            word(meaning),
                            name(wiring.findLeader().orElseThrow().id()));
    }
}
