package tideover.engine.installation.control;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.ControlPort;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.PortKind;
import tideover.engine.site.SignalMeaning;
import tideover.engine.site.Thing;

/** Each coil or input that moves a switching device comes on by one request of the inverter, of the same meaning. */
final class RequestCheck implements Check<ControlWiring> {

    private static final String LIMIT = "control.request";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(ControlWiring wiring, Judging judging) {
        Inverter leader = wiring.findLeader().orElse(null);
        if (leader == null) return;
        Optional<Limit> limit = judging.limit(LIMIT);
        List<Thing> devices = wiring.devices();
        // Where nobody has stated any port it is said once.
        if (wiring.net().controlPorts().isEmpty())
            devices = devices.stream()
                    .min(Comparator.<Thing, Boolean>comparing(NeutralEarthSwitch.class::isInstance)
                            .thenComparing(Thing::id))
                    .stream()
                    .toList();
        for (Thing device : devices) {
            if (limit.isEmpty()) judging.at(device.id()).openForLimit(LIMIT);
            else if (wiring.net().controlPorts().isEmpty())
                judging.at(device.id()).by(limit.get()).openFor(terminals(device));
            else judge(wiring, leader, device, judging, limit.get());
        }
    }

    private static FactId terminals(Thing device) {
        return device.fact(device instanceof IslandingSwitch ? "terminals" : "feedbackContact");
    }

    private static void judge(ControlWiring wiring, Inverter leader, Thing device, Judging judging, Limit limit) {
        List<ControlPort> commands = wiring.commandsOf(device.id());
        if (commands.isEmpty()) {
            Judging.Draft draft = judging.at(device.id()).by(limit);
            List<FactId> gaps = wiring.gaps();
            if (gaps.isEmpty()) draft.notMet("control.request.none", name(device.id()));
            else draft.openFor(gaps);
        }
        for (ControlPort command : commands)
            judge(wiring, leader, device, command, judging.at(command.id()).by(limit));
    }

    private static void judge(
            ControlWiring wiring, Inverter leader, Thing device, ControlPort command, Judging.Draft draft) {
        SignalMeaning meaning = command.onMeans();
        PhraseArg port = Meanings.terminals(command);
        PhraseArg of = name(device.id());
        draft.on(command.fact("onMeans"));
        List<FactId> gaps = ControlWiring.gaps(command);
        Drive drive = wiring.findDrive(command).orElse(null);
        if (drive == null && gaps.isEmpty()) gaps = wiring.gaps();
        if (!gaps.isEmpty() || meaning == null) {
            draft.openFor(gaps);
        } else if (!Meanings.of(device).contains(meaning)) {
            draft.notMet("control.request.otherDevice", port, of, word(meaning));
        } else if (drive == null) {
            draft.notMet("control.request.notReached", port, of);
        } else {
            judge(wiring, leader, drive, meaning, draft, port, of);
        }
    }

    private static void judge(
            ControlWiring wiring,
            Inverter leader,
            Drive drive,
            SignalMeaning meaning,
            Judging.Draft draft,
            PhraseArg port,
            PhraseArg of) {
        List<ControlPort> requests = drive.needed().stream()
                .filter(contact ->
                        contact.kind() == PortKind.OUTPUT && leader.id().equals(contact.at()))
                .toList();
        for (ControlPort request : requests) {
            draft.on(request.fact("onMeans"));
            if (request.onMeans() == null) {
                draft.openFor(request.fact("onMeans"));
                return;
            }
            if (request.onMeans() != meaning) {
                draft.notMet(
                        "control.request.otherMeaning",
                        port,
                        of,
                        word(meaning),
                        Meanings.terminals(request),
                        name(leader.id()),
                        word(request.onMeans()));
                return;
            }
        }
        List<FactId> gaps = requests.isEmpty() ? wiring.gaps() : List.of();
        if (!gaps.isEmpty()) draft.openFor(gaps);
        else if (requests.isEmpty()) draft.notMet("control.request.unasked", port, of, name(leader.id()));
        else
            draft.met(
                    "control.request.met",
                    port,
                    of,
                    Meanings.terminals(requests.get(0)),
                    name(leader.id()),
                    word(meaning));
    }
}
