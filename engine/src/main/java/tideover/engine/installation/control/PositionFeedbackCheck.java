package tideover.engine.installation.control;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.ControlPort;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.SignalMeaning;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** What the inverter is told of a position comes from contacts of the right device, in the right sense. */
final class PositionFeedbackCheck implements Check<ControlWiring> {

    private static final String LIMIT = "control.feedback";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(ControlWiring wiring, Judging judging) {
        if (wiring.findLeader().isEmpty() || wiring.net().controlPorts().isEmpty()) return;
        Optional<Limit> limit = judging.limit(LIMIT);
        Set<ThingId> heard = new LinkedHashSet<>();
        for (ControlPort input : wiring.inputs(Meanings.POSITIONS)) {
            Judging.Draft draft = judging.at(input.id());
            if (limit.isEmpty()) draft.openForLimit(LIMIT);
            else judge(wiring, input, draft.by(limit.get()), heard);
        }
        Inverter leader = wiring.findLeader().get();
        for (Thing device : wiring.devices()) {
            if (heard.contains(device.id())) continue;
            Judging.Draft draft = judging.at(device.id());
            List<FactId> gaps = wiring.gaps();
            if (limit.isEmpty()) draft.openForLimit(LIMIT);
            else if (!gaps.isEmpty()) draft.by(limit.get()).openFor(gaps);
            // Where an input is to hear of it and does not, the finding at the input says so.
            else if (wiring.inputs(Meanings.of(device)).isEmpty())
                draft.by(limit.get()).notMet("control.feedback.none", name(leader.id()), name(device.id()));
        }
    }

    private static void judge(ControlWiring wiring, ControlPort input, Judging.Draft draft, Set<ThingId> heard) {
        SignalMeaning meaning = input.onMeans();
        Drive drive = wiring.findDrive(input).orElse(null);
        List<FactId> gaps = new ArrayList<>(ControlWiring.gaps(input));
        if (drive == null || drive.needed().isEmpty()) gaps.addAll(wiring.gaps());
        else for (ControlPort contact : drive.needed()) gaps.addAll(ControlWiring.gaps(contact));
        if (!gaps.isEmpty() || meaning == null) {
            draft.openFor(gaps);
            return;
        }
        draft.on(input.fact("onMeans"));
        PhraseArg port = Meanings.terminals(input);
        PhraseArg of = Meanings.device(input);
        if (drive == null) {
            draft.notMet("control.feedback.notReached", port, of, word(meaning));
            return;
        }
        if (drive.needed().isEmpty()) {
            draft.notMet("control.feedback.always", port, of, word(meaning));
            return;
        }
        for (ControlPort contact : drive.needed()) {
            String trouble = trouble(wiring, contact, meaning);
            if (trouble == null) continue;
            draft.notMet(
                    "control.feedback." + trouble,
                    port,
                    of,
                    word(meaning),
                    Meanings.terminals(contact),
                    Meanings.device(contact));
            return;
        }
        ControlPort contact = drive.needed().get(0);
        for (ControlPort each : drive.needed()) if (each.at() != null) heard.add(each.at());
        draft.met(
                "control.feedback.met", port, of, word(meaning), Meanings.terminals(contact), Meanings.device(contact));
    }

    /** What is wrong with a contact in the way of a feedback. */
    private static @Nullable String trouble(ControlWiring wiring, ControlPort contact, SignalMeaning meaning) {
        Installation installation = wiring.installation();
        boolean isRequest =
                contact.at() != null && installation.find(contact.at()).orElse(null) instanceof Inverter;
        if (isRequest) return "mirrorsRequest";
        SignalMeaning report = wiring.findReport(contact).orElse(null);
        if (report == meaning) return null;
        return report == Meanings.opposite(meaning) ? "sense" : "otherDevice";
    }
}
